package org.wetside.core.development;

import java.util.List;
import java.util.function.Supplier;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * A step as computed, before it is put into words: most are never shown.
 *
 * @param kind which step
 * @param lnFactor ln of what the time is multiplied by
 * @param lnSd standard deviation it adds
 * @param standing how it is known
 * @param citation where it is from
 * @param stopsGuessed stops that rest on a guess
 * @param used series it was computed from
 * @param printedTemperatures for a temperature step, the printed temperatures used
 * @param words says it
 */
record StepFactor(
    BasisStep.Kind kind,
    double lnFactor,
    double lnSd,
    Standing standing,
    Citation citation,
    double stopsGuessed,
    List<TimeSeries> used,
    List<String> printedTemperatures,
    Supplier<String> words) {
  /** A step by a rule alone. */
  static StepFactor byRule(
      BasisStep.Kind kind, StepRule rule, double lnFactor, double lnSd, Supplier<String> words) {
    return new StepFactor(
        kind, lnFactor, lnSd, rule.standing(), rule.citation(), 0, List.of(), List.of(), words);
  }

  /** A step computed from published or measured times. */
  static StepFactor computed(
      BasisStep.Kind kind,
      double lnFactor,
      double lnSd,
      List<TimeSeries> used,
      Supplier<String> words) {
    return new StepFactor(
        kind,
        lnFactor,
        lnSd,
        Standing.COMPUTED,
        used.get(0).first().citation(),
        0,
        used,
        List.of(),
        words);
  }

  /** The factor that the user has accepted. */
  static StepFactor own(OwnFactor factor) {
    return new StepFactor(
        BasisStep.Kind.OWN_FACTOR,
        factor.lnFactor(),
        factor.lnSd(),
        Standing.COMPUTED,
        Citation.of(OwnFactor.SOURCE),
        0,
        List.of(),
        List.of(),
        () ->
            "learned from "
                + factor.rolls()
                + (factor.rolls() == 1 ? " roll" : " rolls")
                + " of this film in this developer, as you accepted it");
  }

  StepFactor guessed(double stops) {
    return new StepFactor(
        kind, lnFactor, lnSd, standing, citation, stops, used, printedTemperatures, words);
  }

  StepFactor withTemperatures(List<String> printed) {
    return new StepFactor(
        kind, lnFactor, lnSd, standing, citation, stopsGuessed, used, printed, words);
  }

  BasisStep toStep() {
    return new BasisStep(
        kind,
        words.get(),
        Math.exp(lnFactor),
        lnSd,
        standing,
        citation,
        printedTemperatures,
        stopsGuessed > 0);
  }
}
