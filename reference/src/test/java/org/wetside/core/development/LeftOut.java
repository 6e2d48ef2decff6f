package org.wetside.core.development;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.wetside.reference.DevelopmentTimes;

/** Predicts every published time from the others, by each kind of step, leaving it out. */
final class LeftOut {
  /**
   * One prediction.
   *
   * @param lnError ln(predicted / printed)
   * @param lnSd the standard deviation the estimator would have claimed
   * @param lnErrorOfOneRule the same with one slope and one push factor for all developers
   */
  record Case(String kind, double lnError, double lnSd, double lnErrorOfOneRule) {}

  private static final TimeLibrary PUBLISHED = DevelopmentTimes.library();

  private final List<TimeEntry> entries =
      Stream.concat(
              PUBLISHED.published().entries().stream(), PUBLISHED.evidence().entries().stream())
          .filter(entry -> entry.vessel() != Vessel.MACHINE)
          .filter(entry -> !(entry.filmCode().equals("P30") && entry.vessel() == Vessel.ROTARY))
          .toList();
  private final List<TimeSeries> series = EntryIndex.of(entries).series();
  private final StepRules rules = PUBLISHED.rules();
  private final double entrySd = rules.get(StepRule.Name.ENTRY).lnSd();
  private final double oneSlope = -rules.value(StepRule.Name.TEMPERATURE_UNKNOWN);
  private final double oneStop = Math.log(rules.value(StepRule.Name.INDEX_PUSH));
  private final List<Case> cases = new ArrayList<>();

  List<Case> all() {
    for (TimeSeries one : series) {
      temperatures(one);
      for (TimeSeries other : series) {
        if (other != one && PairRatio.COMPARABLE.test(one, other)) {
          vessels(one, other);
          dilutions(one, other);
        }
      }
      indexes(one);
    }
    return cases;
  }

  private TimeLibrary without(Predicate<TimeEntry> removed) {
    return new TimeLibrary(
        EntryIndex.of(entries.stream().filter(removed.negate()).toList()),
        EntryIndex.empty(),
        EntryIndex::empty,
        PUBLISHED::contrast,
        PUBLISHED::indexRules,
        rules);
  }

  private TimeLibrary without(TimeSeries gone) {
    List<TimeEntry> its = entriesOf(gone);
    return without(its::contains);
  }

  private static List<TimeEntry> entriesOf(TimeSeries one) {
    List<TimeEntry> its = new ArrayList<>();
    for (int i = 0; i < one.size(); i++) {
      its.add(one.entry(i));
    }
    return its;
  }

  private void add(String kind, double lnError, double stepSd, double lnErrorOfOneRule) {
    cases.add(new Case(kind, lnError, Math.hypot(entrySd, stepSd), lnErrorOfOneRule));
  }

  private void temperatures(TimeSeries one) {
    for (int i = 0; i < one.size() && one.size() > 2; i++) {
      List<TimeEntry> rest = entriesOf(one);
      rest.remove(i);
      boolean inside = i > 0 && i < one.size() - 1;
      enter("temperature, inside the span", one, new TimeSeries(rest), i, inside);
      enter("temperature, up to 2 K outside", one, new TimeSeries(rest), i, !inside);
    }
    if (one.size() > 1) {
      int base = one.nearest(20);
      TimeSeries alone = new TimeSeries(List.of(one.entry(base)));
      TimeLibrary others = without(one);
      String developer = one.first().developer();
      TimeLibrary unknown = without(entry -> entry.developer().equals(developer));
      for (int i = 0; i < one.size(); i++) {
        double stepK = one.celsius(i) - one.celsius(base);
        if (i != base && Math.abs(stepK) <= 6) {
          alone("temperature, one temperature only", others, one, alone, i);
          alone("temperature, developer unknown", unknown, one, alone, i);
        }
      }
    }
  }

  private void enter(String kind, TimeSeries whole, TimeSeries rest, int i, boolean wanted) {
    double celsius = whole.celsius(i);
    double end = celsius < rest.coldest() ? rest.coldest() : rest.warmest();
    if (!wanted || (!rest.spans(celsius) && Math.abs(celsius - end) > 2)) {
      return;
    }
    TemperatureStep.Entrance entrance = new TemperatureStep(PUBLISHED).enter(rest, celsius);
    StepFactor step = entrance.step().orElseThrow();
    double start = rest.lnSeconds(entrance.from());
    double stepK = celsius - rest.celsius(entrance.from());
    add(
        kind,
        start + step.lnFactor() - whole.lnSeconds(i),
        step.lnSd(),
        start + oneSlope * stepK - whole.lnSeconds(i));
  }

  private void alone(String kind, TimeLibrary library, TimeSeries whole, TimeSeries alone, int i) {
    double celsius = whole.celsius(i);
    TemperatureStep.Entrance entrance = new TemperatureStep(library).alone(alone, 0, celsius);
    StepFactor step = entrance.step().orElseThrow();
    boolean ownSlope = !step.used().isEmpty();
    if (kind.contains("unknown") == ownSlope) {
      return;
    }
    double start = alone.lnSeconds(0);
    double stepK = celsius - alone.coldest();
    add(
        kind,
        start + step.lnFactor() - whole.lnSeconds(i),
        step.lnSd(),
        start + oneSlope * stepK - whole.lnSeconds(i));
  }

  private void vessels(TimeSeries from, TimeSeries to) {
    Vessel had = from.first().vessel();
    Vessel wanted = to.first().vessel();
    if (had != Vessel.SMALL_TANK
        || wanted == had
        || !from.sameDilution(to)
        || !from.sameIndex(to.index())) {
      return;
    }
    TimeLibrary rest = without(to);
    for (int i = 0; i < to.size(); i++) {
      int at = from.at(to.celsius(i));
      if (at >= 0) {
        StepFactor step = new VesselStep(rest).to(wanted, from, to.celsius(i)).orElseThrow();
        double printed = to.lnSeconds(i);
        double start = from.lnSeconds(at);
        if (wanted == Vessel.ROTARY) {
          add(
              "small tank and rotary",
              start + step.lnFactor() - printed,
              step.lnSd(),
              start - printed);
        } else {
          if (!step.used().isEmpty()) {
            add(
                "small and large tank, own pair",
                start + step.lnFactor() - printed,
                step.lnSd(),
                start - printed);
          }
          StepRule large = rules.get(StepRule.Name.VESSEL_LARGE);
          add(
              "small and large tank, any film",
              start + Math.log(large.value()) - printed,
              large.lnSd(),
              start - printed);
        }
      }
    }
  }

  private void dilutions(TimeSeries from, TimeSeries to) {
    if (from.first().vessel() != to.first().vessel()
        || from.sameDilution(to)
        || !from.sameIndex(to.index())) {
      return;
    }
    TimeLibrary rest = without(to);
    for (int i = 0; i < to.size(); i++) {
      int at = from.at(to.celsius(i));
      if (at >= 0) {
        int cell = i;
        new DilutionStep(rest)
            .to(to.first().dilution(), from, to.celsius(i))
            .ifPresent(
                step ->
                    add(
                        "dilution",
                        from.lnSeconds(at) + step.lnFactor() - to.lnSeconds(cell),
                        step.lnSd(),
                        from.lnSeconds(at) - to.lnSeconds(cell)));
      }
    }
  }

  private void indexes(TimeSeries to) {
    Optional<TimeSeries> nearest = Optional.empty();
    for (TimeSeries other : series) {
      if (other != to
          && PairRatio.COMPARABLE.test(other, to)
          && other.first().vessel() == to.first().vessel()
          && other.sameDilution(to)
          && other.hasIndex()
          && to.hasIndex()
          && !other.sameIndex(to.index())
          && nearest.map(known -> closer(other, known, to)).orElse(true)) {
        nearest = Optional.of(other);
      }
    }
    if (nearest.isEmpty()) {
      return;
    }
    TimeSeries from = nearest.get();
    IndexStep index = new IndexStep(without(to));
    double stops = TimeSeries.stopsBetween(from.index(), to.index());
    for (int i = 0; i < to.size(); i++) {
      int at = from.at(to.celsius(i));
      if (at < 0) {
        continue;
      }
      double celsius = to.celsius(i);
      double start = from.lnSeconds(at);
      double printed = to.lnSeconds(i);
      double oneRule = start + oneStop * stops - printed;
      Map<String, Optional<StepFactor>> ways = new LinkedHashMap<>();
      ways.put(
          "index, contrast–time curve",
          index.normal(to.index(), from).isPresent()
              ? Optional.empty()
              : new ContrastStep(PUBLISHED).forPush(to.index(), from));
      ways.put("index, pair of film and developer", index.pair(to.index(), from, celsius));
      ways.put(
          "index, pairs with other developers", index.otherDevelopers(to.index(), from, celsius));
      ways.put("index, guess", Optional.of(index.guess(to.index(), from)));
      ways.forEach(
          (kind, step) ->
              step.ifPresent(
                  found -> add(kind, start + found.lnFactor() - printed, found.lnSd(), oneRule)));
    }
  }

  private static boolean closer(TimeSeries one, TimeSeries known, TimeSeries to) {
    double gain =
        Math.abs(TimeSeries.stopsBetween(known.index(), to.index()))
            - Math.abs(TimeSeries.stopsBetween(one.index(), to.index()));
    return gain > 1e-9 || (Math.abs(gain) < 1e-9 && one.index() < known.index());
  }
}
