package org.wetside.core.development;

import static org.wetside.core.development.StepRule.Name.ENTRY;
import static org.wetside.core.development.StepRule.Name.ENTRY_MEASURED;
import static org.wetside.core.development.StepRule.Name.LIMIT_COLD;
import static org.wetside.core.development.StepRule.Name.LIMIT_GUESS;
import static org.wetside.core.development.StepRule.Name.LIMIT_TOTAL;
import static org.wetside.core.development.StepRule.Name.LIMIT_WARM;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.quantity.Stops;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.source.Standing;

/** Tries every series of the film and developer; keeps the ways that hold and why others do not. */
final class RouteFinder {
  private final TimeLibrary library;
  private final TimeQuestion question;
  private final double celsius;
  private final double index;

  private final TemperatureStep temperatureStep;
  private final DilutionStep dilutionStep;
  private final IndexStep indexStep;
  private final VesselStep vesselStep;

  /** Within one question a step from one dilution or tank is the same for every series. */
  private final Map<String, Optional<StepFactor>> fromDilution = new HashMap<>();

  private final Map<Vessel, Optional<StepFactor>> fromVessel = new EnumMap<>(Vessel.class);

  /** Ways to an honest time. */
  final List<Route> routes = new ArrayList<>();

  /** Ways that are too uncertain or leave the temperatures, for the middle of a clip test. */
  final List<Route> doubtful = new ArrayList<>();

  /** Why the others do not hold. */
  final List<Refusal> refusals = new ArrayList<>();

  RouteFinder(TimeLibrary library, TimeQuestion question) {
    this.library = library;
    this.question = question;
    this.celsius = question.temperature().celsius();
    this.index = question.exposureIndex().isoArithmetic();
    temperatureStep = new TemperatureStep(library);
    dilutionStep = new DilutionStep(library);
    indexStep = new IndexStep(library);
    vesselStep = new VesselStep(library);
    for (TimeSeries series : library.answerable(question.film().code())) {
      if (series.first().developer().equals(question.developer().name())) {
        consider(series);
      }
    }
    if (routes.isEmpty() && refusals.isEmpty()) {
      refusals.add(
          library.has(question.film().code(), question.developer().name())
              ? new Refusal.NoStep(
                  Refusal.Gap.TEMPERATURE, "not stated", question.temperature().toString())
              : new Refusal.NoEntries(question.film(), question.developer()));
    }
  }

  private void consider(TimeSeries series) {
    TimeEntry entry = series.first();
    if (!entry.format().covers(question.format())) {
      refusals.add(
          new Refusal.NoStep(Refusal.Gap.FORMAT, entry.format().word(), question.format().word()));
    } else if (!entry.agitation().serves(question.agitation())) {
      refusals.add(new Refusal.OtherAgitation(question.agitation(), entry.agitation()));
    } else if (!series.hasIndex()) {
      refusals.add(
          new Refusal.NoStep(Refusal.Gap.EXPOSURE_INDEX, "not stated", Words.index(index)));
    } else {
      follow(series).ifPresent(this::judge);
    }
  }

  private Optional<Route> follow(TimeSeries series) {
    TemperatureStep.Entrance entrance = temperatureStep.enter(series, celsius);
    List<StepFactor> steps = new ArrayList<>();
    entrance.step().ifPresent(steps::add);
    boolean follows =
        addDilution(series, steps)
            && addIndex(series, steps)
            && addVessel(series, steps)
            && addContrast(series, steps);
    addOwnFactor(series.entry(entrance.from()), steps);
    return follows
        ? Optional.of(
            new Route(
                series,
                entrance.from(),
                List.copyOf(steps),
                entrySd(series.entry(entrance.from())),
                entrance.slopePerK()))
        : Optional.empty();
  }

  private boolean addDilution(TimeSeries series, List<StepFactor> steps) {
    if (series.sameDilution(question.dilution())) {
      return true;
    }
    Optional<StepFactor> step =
        fromDilution.computeIfAbsent(
            series.dilutionLabel(), had -> dilutionStep.to(question.dilution(), series, celsius));
    return add(
        step,
        steps,
        Refusal.Gap.DILUTION,
        series.first().dilution().label(),
        question.dilution().label());
  }

  private boolean addIndex(TimeSeries series, List<StepFactor> steps) {
    if (!series.sameIndex(index) && question.aimContrast().isEmpty()) {
      steps.add(indexStep.to(index, series, celsius));
    }
    return true;
  }

  private boolean addVessel(TimeSeries series, List<StepFactor> steps) {
    Vessel had = series.first().vessel();
    if (had == question.vessel()) {
      return true;
    }
    Optional<StepFactor> step =
        fromVessel.computeIfAbsent(had, from -> vesselStep.to(question.vessel(), series, celsius));
    return add(step, steps, Refusal.Gap.VESSEL, had.label(), question.vessel().label());
  }

  private boolean addContrast(TimeSeries series, List<StepFactor> steps) {
    if (question.aimContrast().isEmpty()) {
      return true;
    }
    double aim = question.aimContrast().get();
    double stops = TimeSeries.stopsBetween(series.index(), index);
    return add(
        new ContrastStep(library).toAim(aim, stops, series),
        steps,
        Refusal.Gap.CONTRAST,
        "the source's own aim",
        String.valueOf(aim));
  }

  /** What the user measured is theirs already. */
  private void addOwnFactor(TimeEntry entry, List<StepFactor> steps) {
    if (entry.standing() != Standing.MEASURED) {
      library
          .factorOf(entry.filmCode(), entry.developer())
          .map(StepFactor::own)
          .ifPresent(steps::add);
    }
  }

  private boolean add(
      Optional<StepFactor> step, List<StepFactor> steps, Refusal.Gap gap, String from, String to) {
    if (step.isEmpty()) {
      Refusal refusal = new Refusal.NoStep(gap, from, to);
      if (!refusals.contains(refusal)) {
        refusals.add(refusal);
      }
      return false;
    }
    steps.add(step.get());
    return true;
  }

  private double entrySd(TimeEntry entry) {
    double own =
        library.rules().get(entry.standing() == Standing.MEASURED ? ENTRY_MEASURED : ENTRY).lnSd();
    double range =
        entry
            .longest()
            .map(longest -> TimeSpan.toSeconds(longest) / TimeSpan.toSeconds(entry.time()))
            .map(ratio -> Math.log(ratio) / Math.sqrt(12))
            .orElse(0.0);
    return Math.hypot(own, range);
  }

  private void judge(Route route) {
    double total = route.lnSd();
    if (route.isPrinted()) {
      routes.add(route);
    } else if (!temperatureAllowed(route.series())) {
      refuse(route, new Refusal.OutsideTemperatures(question.temperature(), allowed(route)));
    } else if (route.stopsGuessed() > library.rules().value(LIMIT_GUESS) + 0.05) {
      refuse(
          route,
          new Refusal.TooFarToGuess(
              Stops.of(route.stopsGuessed()), Stops.of(library.rules().value(LIMIT_GUESS))));
    } else if (total > library.rules().value(LIMIT_TOTAL)) {
      refuse(route, new Refusal.TooUncertain(total, library.rules().value(LIMIT_TOTAL)));
    } else {
      routes.add(route);
    }
  }

  private void refuse(Route route, Refusal refusal) {
    doubtful.add(route);
    if (refusals.stream().noneMatch(known -> known.getClass() == refusal.getClass())) {
      refusals.add(0, refusal);
    }
  }

  private boolean temperatureAllowed(TimeSeries series) {
    if (series.spans(celsius)) {
      return true;
    }
    double cold = library.rules().value(LIMIT_COLD);
    double warm = library.rules().value(LIMIT_WARM);
    if (celsius > cold - 0.01 && celsius < warm + 0.01) {
      return true;
    }
    return question.outsideOrdinaryTemperatures() && spannedByAny();
  }

  private boolean spannedByAny() {
    return library.published().series().stream().anyMatch(series -> series.spans(celsius))
        || library.evidence().series().stream().anyMatch(series -> series.spans(celsius));
  }

  private TemperatureRange allowed(Route route) {
    double cold = Math.min(library.rules().value(LIMIT_COLD), route.series().coldest());
    double warm = Math.max(library.rules().value(LIMIT_WARM), route.series().warmest());
    return new TemperatureRange(Temperature.ofCelsius(cold), Temperature.ofCelsius(warm));
  }
}
