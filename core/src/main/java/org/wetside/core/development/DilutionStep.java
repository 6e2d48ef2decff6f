package org.wetside.core.development;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.quantity.Dilution;

/** From one dilution of a developer to another, by what it does with the same or other films. */
final class DilutionStep {
  private final TimeLibrary library;

  DilutionStep(TimeLibrary library) {
    this.library = library;
  }

  /** Empty when no film has both dilutions printed. */
  Optional<StepFactor> to(Dilution wanted, TimeSeries from, double celsius) {
    Dilution had = from.first().dilution();
    Map<String, List<TimeSeries>> strong = new HashMap<>();
    List<TimeSeries> weak = new ArrayList<>();
    for (TimeSeries one : library.allOfDeveloper(from.first().developer())) {
      if (one.sameDilution(had)) {
        strong.computeIfAbsent(one.first().filmCode(), film -> new ArrayList<>()).add(one);
      } else if (one.sameDilution(wanted)) {
        weak.add(one);
      }
    }
    Map<String, List<Double>> ratios = new HashMap<>();
    Map<String, List<TimeSeries>> pairs = new HashMap<>();
    for (TimeSeries to : weak) {
      for (TimeSeries start : strong.getOrDefault(to.first().filmCode(), List.of())) {
        if (onlyDilutionDiffers(start, to)) {
          PairRatio.ln(start, to, celsius)
              .ifPresent(
                  ratio -> {
                    String film = to.first().filmCode();
                    ratios.computeIfAbsent(film, key -> new ArrayList<>()).add(ratio);
                    pairs
                        .computeIfAbsent(film, key -> new ArrayList<>())
                        .addAll(List.of(to, start));
                  });
        }
      }
    }
    if (ratios.isEmpty()) {
      return Optional.empty();
    }
    String film = from.first().filmCode();
    List<Double> own = ratios.get(film);
    List<TimeSeries> ownPairs = pairs.get(film);
    if (own != null && ownPairs != null) {
      return Optional.of(step(wanted, had, Median.of(own), ownPairs, "this film"));
    }
    double median = Median.of(ratios.values().stream().map(Median::of).toList());
    List<TimeSeries> used = new ArrayList<>();
    pairs.values().forEach(used::addAll);
    int films = ratios.size();
    return Optional.of(
        step(wanted, had, median, used, films + (films == 1 ? " other film" : " other films")));
  }

  private StepFactor step(
      Dilution wanted, Dilution had, double ln, List<TimeSeries> used, String films) {
    return StepFactor.computed(
        BasisStep.Kind.DILUTION,
        ln,
        library.rules().get(StepRule.Name.DILUTION).lnSd(),
        used,
        () ->
            had.label()
                + " to "
                + wanted.label()
                + ": "
                + Words.factor(ln)
                + ", median of "
                + used.size() / 2
                + (used.size() == 2 ? " pair of " : " pairs of ")
                + films);
  }

  private static boolean onlyDilutionDiffers(TimeSeries one, TimeSeries other) {
    return one.first().vessel() == other.first().vessel()
        && one.sameIndex(other.index())
        && PairRatio.COMPARABLE.test(one, other);
  }
}
