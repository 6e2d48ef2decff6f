package org.wetside.core.development;

import static org.wetside.core.development.StepRule.Name.TEMPERATURE_INSIDE;
import static org.wetside.core.development.StepRule.Name.TEMPERATURE_OTHER_FILMS;
import static org.wetside.core.development.StepRule.Name.TEMPERATURE_OUTSIDE;
import static org.wetside.core.development.StepRule.Name.TEMPERATURE_UNKNOWN;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.wetside.core.source.Standing;

/** From the printed temperatures of one series to the asked one. */
final class TemperatureStep {
  /** Shorter spans give no slope worth passing on to another film, in kelvins. */
  private static final double LEAST_SPAN_K = 3;

  /**
   * Where a series is entered.
   *
   * @param from index of the entry the way starts at
   * @param step the step; null when the entry is printed at the asked temperature
   * @param slopePerK change of ln(time) per kelvin there, for the bench band
   */
  record Entrance(int from, java.util.Optional<StepFactor> step, double slopePerK) {}

  private final TimeLibrary library;

  TemperatureStep(TimeLibrary library) {
    this.library = library;
  }

  Entrance enter(TimeSeries series, double celsius) {
    int exact = series.at(celsius);
    if (exact >= 0) {
      double slope = series.size() > 1 ? series.slopePerK() : -unknownSlope();
      return new Entrance(exact, java.util.Optional.empty(), slope);
    }
    if (series.spans(celsius)) {
      return inside(series, celsius);
    }
    double end = celsius < series.coldest() ? series.coldest() : series.warmest();
    double beyondK = celsius - end;
    boolean hasSlope = series.size() > 1 && series.warmest() - series.coldest() > 1;
    if (hasSlope && Math.abs(beyondK) <= library.rules().value(TEMPERATURE_OUTSIDE) + 1e-9) {
      return outside(series, beyondK, celsius);
    }
    return alone(series, series.nearest(celsius), celsius);
  }

  private double unknownSlope() {
    return library.rules().value(TEMPERATURE_UNKNOWN);
  }

  private Entrance inside(TimeSeries series, double celsius) {
    int low = series.below(celsius);
    int nearest = series.nearest(celsius);
    double lnFactor = series.lnSecondsAt(celsius) - series.lnSeconds(nearest);
    double slope =
        (series.lnSeconds(low + 1) - series.lnSeconds(low))
            / (series.celsius(low + 1) - series.celsius(low));
    TimeEntry cold = series.entry(low);
    TimeEntry warm = series.entry(low + 1);
    StepFactor step =
        StepFactor.computed(
                BasisStep.Kind.TEMPERATURE,
                lnFactor,
                library.rules().get(TEMPERATURE_INSIDE).lnSd(),
                List.of(series),
                () -> "between " + Words.timeAt(cold) + " and " + Words.timeAt(warm))
            .withTemperatures(List.of(cold.printedTemperature(), warm.printedTemperature()));
    return new Entrance(nearest, java.util.Optional.of(step), slope);
  }

  private Entrance outside(TimeSeries series, double beyondK, double celsius) {
    int end = series.nearest(celsius);
    double slope = series.slopePerK();
    TimeEntry first = series.first();
    TimeEntry last = series.entry(series.size() - 1);
    StepFactor step =
        StepFactor.computed(
                BasisStep.Kind.TEMPERATURE,
                slope * beyondK,
                library.rules().get(TEMPERATURE_OUTSIDE).lnSdOver(beyondK),
                List.of(series),
                () ->
                    "beyond the printed "
                        + first.printedTemperature()
                        + " to "
                        + last.printedTemperature()
                        + " with their slope, "
                        + Words.slope(slope))
            .withTemperatures(List.of(first.printedTemperature(), last.printedTemperature()));
    return new Entrance(end, java.util.Optional.of(step), slope);
  }

  /** No slope of its own: what the developer does with other films, else what most do. */
  Entrance alone(TimeSeries series, int from, double celsius) {
    TimeEntry entry = series.entry(from);
    double stepK = celsius - series.celsius(from);
    List<TimeSeries> used = new ArrayList<>();
    double median = medianSlope(series, used);
    if (!used.isEmpty()) {
      StepFactor step =
          StepFactor.computed(
              BasisStep.Kind.TEMPERATURE,
              median * stepK,
              library.rules().get(TEMPERATURE_OTHER_FILMS).lnSdOver(stepK),
              used,
              () ->
                  "from "
                      + entry.printedTemperature()
                      + " with the median slope of "
                      + used.size()
                      + " series of "
                      + entry.developer()
                      + " "
                      + entry.dilution().label()
                      + ", "
                      + Words.slope(median));
      return new Entrance(
          from,
          java.util.Optional.of(step.withTemperatures(List.of(entry.printedTemperature()))),
          median);
    }
    StepRule rule = library.rules().get(TEMPERATURE_UNKNOWN);
    double slope = -rule.value();
    StepFactor step =
        new StepFactor(
            BasisStep.Kind.TEMPERATURE,
            slope * stepK,
            rule.lnSdOver(stepK),
            Standing.COMPUTED,
            rule.citation(),
            0,
            List.of(),
            List.of(entry.printedTemperature()),
            () ->
                "from "
                    + entry.printedTemperature()
                    + " with the slope most developers have, "
                    + Words.slope(slope)
                    + ": nothing of this one is known");
    return new Entrance(from, java.util.Optional.of(step), slope);
  }

  /** Median over films of the median over each film's series; the film itself goes first. */
  private double medianSlope(TimeSeries series, List<TimeSeries> used) {
    String film = series.first().filmCode();
    Map<String, List<Double>> slopes = new HashMap<>();
    Map<String, List<TimeSeries>> from = new HashMap<>();
    for (TimeSeries other : library.allOfDeveloper(series.first().developer())) {
      if (other != series
          && other.sameDilution(series)
          && other.warmest() - other.coldest() >= LEAST_SPAN_K) {
        String its = other.first().filmCode();
        slopes.computeIfAbsent(its, key -> new ArrayList<>()).add(other.slopePerK());
        from.computeIfAbsent(its, key -> new ArrayList<>()).add(other);
      }
    }
    List<Double> own = slopes.get(film);
    List<TimeSeries> ownSeries = from.get(film);
    if (own != null && ownSeries != null) {
      used.addAll(ownSeries);
      return Median.of(own);
    }
    from.values().forEach(used::addAll);
    return used.isEmpty()
        ? Double.NaN
        : Median.of(slopes.values().stream().map(Median::of).toList());
  }
}
