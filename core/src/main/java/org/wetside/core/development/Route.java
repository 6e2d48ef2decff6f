package org.wetside.core.development;

import java.util.ArrayList;
import java.util.List;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * The way from one entry to the asked conditions, in numbers.
 *
 * @param series where it starts
 * @param from which entry of it
 * @param steps what was done on the way
 * @param entrySd standard deviation of the entry itself, in ln(time)
 * @param slopePerK change of ln(time) per kelvin, for the bench band
 */
record Route(
    TimeSeries series, int from, List<StepFactor> steps, double entrySd, double slopePerK) {
  TimeEntry entry() {
    return series.entry(from);
  }

  double seconds() {
    double ln = series.lnSeconds(from);
    for (StepFactor step : steps) {
      ln += step.lnFactor();
    }
    return Math.exp(ln);
  }

  double lnSd() {
    double variance = entrySd * entrySd;
    for (StepFactor step : steps) {
      variance += step.lnSd() * step.lnSd();
    }
    return Math.sqrt(variance);
  }

  double stopsGuessed() {
    double stops = 0;
    for (StepFactor step : steps) {
      stops += step.stopsGuessed();
    }
    return stops;
  }

  /** Whether it is printed for just that; the user's own factor takes nothing from it. */
  boolean isPrinted() {
    return steps.stream().allMatch(step -> step.kind() == BasisStep.Kind.OWN_FACTOR);
  }

  /** Whether it holds at this user's bench: their factor is in it. */
  boolean isLearned() {
    return steps.stream().anyMatch(step -> step.kind() == BasisStep.Kind.OWN_FACTOR);
  }

  boolean uses(TimeSeries other) {
    for (StepFactor step : steps) {
      if (step.used().contains(other)) {
        return true;
      }
    }
    return series == other;
  }

  Standing standing() {
    Standing weakest = entry().standing();
    for (StepFactor step : steps) {
      weakest = weakest.weaker(step.standing());
    }
    return weakest;
  }

  Candidate toCandidate() {
    List<BasisStep> basis = new ArrayList<>();
    TimeEntry entry = entry();
    basis.add(
        new BasisStep(
            BasisStep.Kind.ENTRY,
            describe(entry),
            1,
            entrySd,
            entry.standing(),
            new Citation(entry.citation().sourceId(), entry.citation().locator()),
            List.of(entry.printedTemperature()),
            false));
    for (StepFactor step : steps) {
      basis.add(step.toStep());
    }
    return new Candidate(entry, TimeSpan.ofSeconds(roundToTenth(seconds())), lnSd(), basis);
  }

  private static double roundToTenth(double seconds) {
    return Math.round(seconds * 10) / 10.0;
  }

  private static String describe(TimeEntry entry) {
    StringBuilder text = new StringBuilder(Words.timeAt(entry));
    entry
        .exposureIndex()
        .ifPresent(index -> text.append(", EI ").append(Words.index(index.isoArithmetic())));
    text.append(", ").append(entry.dilution().label());
    if (!entry.printedDilution().isEmpty()) {
      text.append(" (printed ").append(entry.printedDilution()).append(')');
    }
    text.append(", ").append(entry.vessel().label());
    if (entry.format() != FilmFormat.ANY) {
      text.append(", ").append(entry.format().word());
    }
    if (entry.transcribed()) {
      text.append("; read in a transcription");
    }
    return text.toString();
  }
}
