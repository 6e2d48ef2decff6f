package org.wetside.core.development;

import static org.wetside.core.development.StepRule.Name.VESSEL_LARGE;
import static org.wetside.core.development.StepRule.Name.VESSEL_NOT_STATED;
import static org.wetside.core.development.StepRule.Name.VESSEL_PAIR;
import static org.wetside.core.development.StepRule.Name.VESSEL_ROTARY;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** From one tank to another. */
final class VesselStep {
  private final TimeLibrary library;

  VesselStep(TimeLibrary library) {
    this.library = library;
  }

  /** Empty when no rule leads there, as to or from a tray. */
  Optional<StepFactor> to(Vessel wanted, TimeSeries from, double celsius) {
    Vessel had = from.first().vessel();
    if (had == Vessel.NOT_STATED || wanted == Vessel.NOT_STATED) {
      StepRule rule = library.rules().get(VESSEL_NOT_STATED);
      return Optional.of(
          StepFactor.byRule(
              BasisStep.Kind.VESSEL,
              rule,
              0,
              rule.lnSd(),
              () -> "the source does not say which tank: taken as it is"));
    }
    boolean rotary = had == Vessel.ROTARY || wanted == Vessel.ROTARY;
    if (!isStep(had) || !isStep(wanted)) {
      return Optional.empty();
    }
    return rotary
        ? Optional.of(rotary(had, wanted))
        : Optional.of(hand(had, wanted, from, celsius));
  }

  private static boolean isStep(Vessel vessel) {
    return vessel == Vessel.SMALL_TANK || vessel == Vessel.LARGE_TANK || vessel == Vessel.ROTARY;
  }

  private StepFactor hand(Vessel had, Vessel wanted, TimeSeries from, double celsius) {
    List<TimeSeries> used = new ArrayList<>();
    List<Double> ratios = new ArrayList<>();
    List<TimeSeries> film = library.allOf(from.first().filmCode(), from.first().developer());
    for (TimeSeries one : film) {
      if (one.first().vessel() != had) {
        continue;
      }
      for (TimeSeries other : film) {
        if (other.first().vessel() == wanted
            && one.sameIndex(other.index())
            && one.sameDilution(other)
            && PairRatio.COMPARABLE.test(one, other)) {
          PairRatio.ln(one, other, celsius)
              .ifPresent(
                  ratio -> {
                    ratios.add(ratio);
                    used.add(one);
                    used.add(other);
                  });
        }
      }
    }
    if (!ratios.isEmpty()) {
      double ln = Median.of(ratios);
      return StepFactor.computed(
          BasisStep.Kind.VESSEL,
          ln,
          library.rules().get(VESSEL_PAIR).lnSd(),
          used,
          () ->
              had.label()
                  + " to "
                  + wanted.label()
                  + ": "
                  + Words.factor(ln)
                  + ", as printed for this film and developer");
    }
    StepRule rule = library.rules().get(VESSEL_LARGE);
    double ln = toLarge(wanted) ? Math.log(rule.value()) : -Math.log(rule.value());
    return byRule(rule, had, wanted, ln, rule.lnSd(), "as most published pairs have it");
  }

  private static boolean toLarge(Vessel wanted) {
    return wanted == Vessel.LARGE_TANK;
  }

  private StepFactor rotary(Vessel had, Vessel wanted) {
    StepRule rule = library.rules().get(VESSEL_ROTARY);
    StepRule large = library.rules().get(VESSEL_LARGE);
    double ln = wanted == Vessel.ROTARY ? Math.log(rule.value()) : -Math.log(rule.value());
    double sd = rule.lnSd();
    if (had == Vessel.LARGE_TANK || wanted == Vessel.LARGE_TANK) {
      ln += toLarge(wanted) ? Math.log(large.value()) : -Math.log(large.value());
      sd = Math.hypot(sd, large.lnSd());
    }
    return byRule(rule, had, wanted, ln, sd, "six published pairs of one film");
  }

  private static StepFactor byRule(
      StepRule rule, Vessel had, Vessel wanted, double ln, double sd, String why) {
    return StepFactor.byRule(
        BasisStep.Kind.VESSEL,
        rule,
        ln,
        sd,
        () -> had.label() + " to " + wanted.label() + ": " + Words.factor(ln) + ", " + why);
  }
}
