package org.wetside.core.development;

import static org.wetside.core.development.StepRule.Name.HAND_TANK_SHORTEST;
import static org.wetside.core.development.StepRule.Name.VESSEL_ROTARY;
import static org.wetside.core.development.StepRule.Name.VESSEL_ROTARY_PRACTICE_HIGH;
import static org.wetside.core.development.StepRule.Name.VESSEL_ROTARY_PRACTICE_LOW;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.quantity.TimeSpan;

/** What one must know beside an estimate. */
final class Warnings {
  private final TimeLibrary library;
  private final TimeQuestion question;
  private final Route headline;
  private final List<Route> routes;
  private final List<TimeWarning> warnings = new ArrayList<>();

  Warnings(TimeLibrary library, TimeQuestion question, Route headline, List<Route> routes) {
    this.library = library;
    this.question = question;
    this.headline = headline;
    this.routes = routes;
  }

  List<TimeWarning> of(Candidate taken, List<Candidate> disagreements) {
    if (question.film().isFormerCoating()) {
      warnings.add(new TimeWarning.FormerCoating(question.film()));
    }
    tooShort(taken.time());
    formats(taken);
    for (Candidate other : disagreements) {
      warnings.add(new TimeWarning.SourcesDisagree(other, apart(taken.band(), other.band())));
    }
    for (BasisStep step : taken.steps()) {
      if (step.guess()) {
        warnings.add(new TimeWarning.RestsOnGuess(step));
      }
    }
    longerForContrast();
    rotaryPractice();
    if (!taken.entry().note().isEmpty()) {
      warnings.add(new TimeWarning.Note(taken.entry().note(), taken.entry().isOwn()));
    }
    return List.copyOf(warnings);
  }

  private void tooShort(Duration time) {
    double limit = library.rules().value(HAND_TANK_SHORTEST);
    if (question.vessel() == Vessel.SMALL_TANK && TimeSpan.toSeconds(time) < limit) {
      warnings.add(new TimeWarning.ShortInHandTank(time, TimeSpan.ofSeconds(limit)));
    }
  }

  private void formats(Candidate taken) {
    if (question.format() != FilmFormat.ANY) {
      return;
    }
    Map<FilmFormat, Route> best = new EnumMap<>(FilmFormat.class);
    String source = taken.entry().citation().sourceId();
    for (Route route : routes) {
      FilmFormat format = route.entry().format();
      if (format == FilmFormat.ANY || !route.entry().citation().sourceId().equals(source)) {
        continue;
      }
      best.merge(format, route, (one, other) -> other.lnSd() < one.lnSd() - 1e-12 ? other : one);
    }
    boolean differ =
        best.values().stream()
            .filter(route -> route.lnSd() <= headline.lnSd() + 1e-9)
            .anyMatch(route -> Math.abs(route.seconds() - TimeSpan.toSeconds(taken.time())) >= 1);
    if (differ) {
      warnings.add(
          new TimeWarning.FormatMatters(
              best.values().stream()
                  .filter(route -> route.lnSd() <= headline.lnSd() + 1e-9)
                  .map(route -> route.equals(headline) ? taken : route.toCandidate())
                  .toList()));
    }
  }

  private static Duration apart(Band one, Band other) {
    return one.low().compareTo(other.high()) > 0
        ? one.low().minus(other.high())
        : other.low().minus(one.high());
  }

  private void longerForContrast() {
    TimeSeries series = headline.series();
    double wanted = question.exposureIndex().isoArithmetic();
    boolean asked = headline.steps().stream().anyMatch(this::isUnchangedIndex);
    if (asked) {
      Optional<StepFactor> raised =
          Optional.of(
              new IndexStep(library).raised(wanted, series, question.temperature().celsius()));
      double seconds = headline.seconds() * Math.exp(raised.get().lnFactor());
      warnings.add(new TimeWarning.LongerForContrast(rounded(seconds)));
    }
  }

  private boolean isUnchangedIndex(StepFactor step) {
    return step.kind() == BasisStep.Kind.EXPOSURE_INDEX && step.lnFactor() == 0;
  }

  private void rotaryPractice() {
    Vessel had = headline.entry().vessel();
    boolean to = question.vessel() == Vessel.ROTARY && had == Vessel.SMALL_TANK;
    boolean from = question.vessel() == Vessel.SMALL_TANK && had == Vessel.ROTARY;
    if (to || from) {
      double low = library.rules().value(VESSEL_ROTARY_PRACTICE_LOW);
      double high = library.rules().value(VESSEL_ROTARY_PRACTICE_HIGH);
      double published = library.rules().value(VESSEL_ROTARY);
      double seconds = headline.seconds();
      warnings.add(
          to
              ? new TimeWarning.RotaryPracticeDiffers(
                  rounded(seconds * low / published), rounded(seconds * high / published))
              : new TimeWarning.RotaryPracticeDiffers(
                  rounded(seconds * published / high), rounded(seconds * published / low)));
    }
  }

  private static Duration rounded(double seconds) {
    return Duration.ofSeconds(Math.round(seconds));
  }
}
