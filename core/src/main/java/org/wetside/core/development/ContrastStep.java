package org.wetside.core.development;

import static org.wetside.core.development.StepRule.Name.INDEX_CONTRAST;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wetside.core.sensitometry.ContrastCurve;

/** Along a contrast–time curve of the film and developer: to a push, or to a stated contrast. */
final class ContrastStep {
  /** A printed time may lie this far before the first point: it is rounded, the curve is not. */
  private static final double ROUNDING = 0.03;

  private final TimeLibrary library;

  ContrastStep(TimeLibrary library) {
    this.library = library;
  }

  /** More contrast by the rule's amount for each stop of push. */
  Optional<StepFactor> forPush(double wantedIndex, TimeSeries from) {
    double stops = TimeSeries.stopsBetween(from.index(), wantedIndex);
    if (!startsAtNormal(from)) {
      return Optional.empty();
    }
    StepRule rule = library.rules().get(INDEX_CONTRAST);
    return along(from, start -> start + rule.value() * stops, BasisStep.Kind.EXPOSURE_INDEX)
        .map(
            step ->
                new StepFactor(
                    step.kind(),
                    step.lnFactor(),
                    step.lnSd(),
                    step.standing(),
                    step.citation(),
                    0,
                    List.of(),
                    List.of(),
                    () -> IndexStep.way(from.index(), wantedIndex) + ": " + step.words().get()));
  }

  /** Stops count from where the contrast is normal: not from a raised index of unchanged time. */
  private boolean startsAtNormal(TimeSeries from) {
    for (IndexRule rule : library.indexRules()) {
      TimeEntry entry = from.first();
      double normal = rule.from().isoArithmetic();
      if (from.index() > normal
          && rule.covers(entry.filmCode(), entry.developer(), normal, from.index())) {
        return false;
      }
    }
    return true;
  }

  /** To a stated contrast index, more by the rule's amount for each stop of push. */
  Optional<StepFactor> toAim(double aim, double stops, TimeSeries from) {
    double wanted = aim + library.rules().value(INDEX_CONTRAST) * stops;
    return along(from, start -> wanted, BasisStep.Kind.CONTRAST);
  }

  private Optional<StepFactor> along(
      TimeSeries from, java.util.function.DoubleUnaryOperator wanted, BasisStep.Kind kind) {
    for (ContrastSeries series : library.contrast()) {
      if (fits(series, from)) {
        Optional<StepFactor> step = along(series, from, wanted, kind);
        if (step.isPresent()) {
          return step;
        }
      }
    }
    return Optional.empty();
  }

  private static boolean fits(ContrastSeries series, TimeSeries from) {
    TimeEntry entry = from.first();
    return series.filmCode().equals(entry.filmCode())
        && series.developer().equals(entry.developer())
        && series.dilution().matches(entry.dilution())
        && series.vessel() == entry.vessel()
        && series.temperature().isPresent()
        && from.spans(series.temperature().orElseThrow().celsius());
  }

  private Optional<StepFactor> along(
      ContrastSeries series,
      TimeSeries from,
      java.util.function.DoubleUnaryOperator wanted,
      BasisStep.Kind kind) {
    ContrastCurve curve = series.curve();
    double printed = Math.exp(from.lnSecondsAt(series.temperature().orElseThrow().celsius()));
    if (printed < curve.firstSeconds() * (1 - ROUNDING)
        || printed > curve.lastSeconds() * (1 + ROUNDING)) {
      return Optional.empty();
    }
    double anchor = Math.min(Math.max(printed, curve.firstSeconds()), curve.lastSeconds());
    double start = curve.contrastAt(anchor).orElseThrow();
    double aim = wanted.applyAsDouble(start);
    OptionalDouble seconds = curve.secondsFor(aim);
    if (seconds.isEmpty()) {
      return Optional.empty();
    }
    double ln = Math.log(seconds.getAsDouble() / anchor);
    return Optional.of(
        new StepFactor(
            kind,
            ln,
            library.rules().get(INDEX_CONTRAST).lnSd(),
            org.wetside.core.source.Standing.COMPUTED,
            series.citation(),
            0,
            List.of(),
            List.of(),
            () ->
                "contrast "
                    + Words.twoDecimals(start)
                    + " to "
                    + Words.twoDecimals(aim)
                    + " on the contrast–time curve, "
                    + Words.factor(ln)));
  }
}
