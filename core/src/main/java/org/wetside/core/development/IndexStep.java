package org.wetside.core.development;

import static org.wetside.core.development.StepRule.Name.INDEX_FILM;
import static org.wetside.core.development.StepRule.Name.INDEX_NORMAL;
import static org.wetside.core.development.StepRule.Name.INDEX_PAIR;
import static org.wetside.core.development.StepRule.Name.INDEX_PULL;
import static org.wetside.core.development.StepRule.Name.INDEX_PUSH;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** From the exposure index of a series to the asked one; the first rule that applies is taken. */
final class IndexStep {
  private final TimeLibrary library;
  private final ContrastStep contrast;

  IndexStep(TimeLibrary library) {
    this.library = library;
    this.contrast = new ContrastStep(library);
  }

  /** The step; the weakest rule always applies. */
  StepFactor to(double wanted, TimeSeries from, double celsius) {
    return normal(wanted, from).orElseGet(() -> raised(wanted, from, celsius));
  }

  /** The step without the maker's word that the index is normal processing. */
  StepFactor raised(double wanted, TimeSeries from, double celsius) {
    return pair(wanted, from, celsius)
        .or(() -> contrast.forPush(wanted, from))
        .or(() -> otherDevelopers(wanted, from, celsius))
        .orElseGet(() -> guess(wanted, from));
  }

  Optional<StepFactor> normal(double wanted, TimeSeries from) {
    TimeEntry entry = from.first();
    for (IndexRule rule : library.indexRules()) {
      if (rule.covers(entry.filmCode(), entry.developer(), from.index(), wanted)) {
        return Optional.of(
            new StepFactor(
                BasisStep.Kind.EXPOSURE_INDEX,
                0,
                library.rules().get(INDEX_NORMAL).lnSd(),
                rule.standing(),
                rule.citation(),
                0,
                List.of(),
                List.of(),
                () ->
                    way(from.index(), wanted)
                        + ": the maker calls it normal processing, time unchanged"));
      }
    }
    return Optional.empty();
  }

  Optional<StepFactor> pair(double wanted, TimeSeries from, double celsius) {
    List<TimeSeries> same =
        library.allOf(from.first().filmCode(), from.first().developer()).stream()
            .filter(one -> PairRatio.COMPARABLE.test(one, from))
            .toList();
    return Stream.<java.util.function.Predicate<TimeSeries>>of(
            one -> sameDilution(one, from) && sameVessel(one, from),
            one -> sameDilution(one, from) && sameVessel(one, Vessel.SMALL_TANK),
            one -> sameDilution(one, from) && sameVessel(one, Vessel.LARGE_TANK),
            one -> !sameDilution(one, from) && sameVessel(one, from))
        .map(which -> climb(same.stream().filter(which).toList(), wanted, from, celsius))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private Optional<StepFactor> climb(
      List<TimeSeries> candidates, double wanted, TimeSeries from, double celsius) {
    List<TimeSeries> fromFirst = new ArrayList<>();
    if (candidates.contains(from)) {
      fromFirst.add(from);
    }
    fromFirst.addAll(candidates);
    return IndexLadder.of(fromFirst)
        .climb(from.index(), wanted, celsius)
        .map(
            climb ->
                StepFactor.computed(
                    BasisStep.Kind.EXPOSURE_INDEX,
                    climb.lnFactor(),
                    library.rules().get(INDEX_PAIR).lnSd(),
                    climb.rungs(),
                    () -> pairWords(wanted, from, celsius, climb)));
  }

  private static String pairWords(
      double wanted, TimeSeries from, double celsius, IndexLadder.Climb climb) {
    TimeSeries low = climb.rungs().get(0);
    TimeSeries high = climb.rungs().get(climb.rungs().size() - 1);
    return way(from.index(), wanted)
        + ": "
        + Words.oneDecimal(Math.abs(TimeSeries.stopsBetween(from.index(), wanted)))
        + " of the "
        + Words.oneDecimal(TimeSeries.stopsBetween(low.index(), high.index()))
        + " stops between the printed EI "
        + rung(low, celsius)
        + " and EI "
        + rung(high, celsius)
        + ", geometric, "
        + Words.factor(climb.lnFactor());
  }

  private static String rung(TimeSeries series, double celsius) {
    TimeEntry entry = series.entry(series.nearest(celsius));
    return Words.index(series.index())
        + " ("
        + entry.dilution().label()
        + ", "
        + Words.timeAt(entry)
        + ")";
  }

  Optional<StepFactor> otherDevelopers(double wanted, TimeSeries from, double celsius) {
    Map<String, List<TimeSeries>> groups = new LinkedHashMap<>();
    for (TimeSeries one : library.allOfFilm(from.first().filmCode())) {
      TimeEntry entry = one.first();
      if (!entry.developer().equals(from.first().developer())
          && entry.agitation().serves(from.first().agitation())) {
        String key = entry.developer() + '/' + one.dilutionLabel() + '/' + entry.vessel();
        groups.computeIfAbsent(key, group -> new ArrayList<>()).add(one);
      }
    }
    double stops = TimeSeries.stopsBetween(from.index(), wanted);
    List<Double> perStop = new ArrayList<>();
    List<TimeSeries> used = new ArrayList<>();
    for (List<TimeSeries> group : groups.values()) {
      IndexLadder ladder = IndexLadder.of(group);
      Optional<IndexLadder.Climb> climb = ladder.climb(from.index(), wanted, celsius);
      if (climb.isPresent()) {
        perStop.add(climb.get().lnFactor() / stops);
        used.addAll(climb.get().rungs());
      }
    }
    if (perStop.isEmpty()) {
      for (List<TimeSeries> group : groups.values()) {
        List<Double> some = IndexLadder.of(group).perStop(from.index(), wanted, celsius);
        if (!some.isEmpty()) {
          perStop.addAll(some);
          used.addAll(group);
        }
      }
    }
    if (perStop.isEmpty()) {
      return Optional.empty();
    }
    double ln = Median.of(perStop) * stops;
    return Optional.of(
        StepFactor.computed(
            BasisStep.Kind.EXPOSURE_INDEX,
            ln,
            library.rules().get(INDEX_FILM).lnSdOver(stops),
            used,
            () ->
                way(from.index(), wanted)
                    + ": median of "
                    + perStop.size()
                    + " printed pairs of this film with other developers, "
                    + Words.factor(ln)));
  }

  StepFactor guess(double wanted, TimeSeries from) {
    double stops = TimeSeries.stopsBetween(from.index(), wanted);
    StepRule rule = library.rules().get(stops > 0 ? INDEX_PUSH : INDEX_PULL);
    double ln = Math.log(rule.value()) * Math.abs(stops);
    return StepFactor.byRule(
            BasisStep.Kind.EXPOSURE_INDEX,
            rule,
            ln,
            rule.lnSdOver(stops),
            () ->
                way(from.index(), wanted)
                    + ": nothing is known of this film, a guess from other films, "
                    + Words.factor(ln))
        .guessed(Math.abs(stops));
  }

  static String way(double from, double wanted) {
    return "EI " + Words.index(from) + " to " + Words.index(wanted);
  }

  private static boolean sameDilution(TimeSeries one, TimeSeries other) {
    return one.sameDilution(other);
  }

  private static boolean sameVessel(TimeSeries one, TimeSeries other) {
    return sameVessel(one, other.first().vessel());
  }

  private static boolean sameVessel(TimeSeries one, Vessel vessel) {
    return one.first().vessel() == vessel;
  }
}
