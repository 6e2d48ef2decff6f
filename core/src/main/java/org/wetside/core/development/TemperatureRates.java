package org.wetside.core.development;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.source.Standing;
import org.wetside.core.thermal.DevelopmentRate;

/**
 * How fast a developer works at other temperatures, from printed times that differ only in those.
 */
public final class TemperatureRates {
  /** Shorter spans give no slope worth following a bath by, in kelvins. */
  private static final double LEAST_SPAN_K = 3;

  private final TimeLibrary library;

  /** From this library. */
  public TemperatureRates(TimeLibrary library) {
    this.library = library;
  }

  /**
   * The rate around a temperature: from the widest series of this film in this developer, else the
   * median of the developer's other films at this dilution over the span they share.
   *
   * @param filmCode code of the film; empty when it is not known
   * @return empty when nothing is printed that reaches over three kelvins around the temperature
   */
  public Optional<DevelopmentRate> around(
      String filmCode, String developer, Dilution dilution, Temperature reference) {
    List<TimeSeries> own =
        filmCode.isEmpty()
            ? List.of()
            : wide(library.allOf(filmCode, developer), dilution, reference);
    Optional<TimeSeries> widest =
        own.stream().max(Comparator.comparingDouble(TemperatureRates::span));
    if (widest.isPresent()) {
      TimeSeries series = widest.get();
      return Optional.of(
          rate(
              -series.slopePerK(),
              reference,
              series.coldest(),
              series.warmest(),
              "printed times from "
                  + series.first().printedTemperature()
                  + " to "
                  + series.entry(series.size() - 1).printedTemperature()
                  + ", "
                  + series.first().citation().sourceId()));
    }
    List<TimeSeries> others = wide(library.allOfDeveloper(developer), dilution, reference);
    if (others.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        rate(
            -Median.of(others.stream().map(TimeSeries::slopePerK).toList()),
            reference,
            others.stream().mapToDouble(TimeSeries::coldest).max().orElseThrow(),
            others.stream().mapToDouble(TimeSeries::warmest).min().orElseThrow(),
            "median of "
                + others.size()
                + " printed series of "
                + developer
                + " "
                + dilution.label()));
  }

  private static List<TimeSeries> wide(
      List<TimeSeries> all, Dilution dilution, Temperature reference) {
    return all.stream()
        .filter(series -> series.dilutionLabel().equals(dilution.label()))
        .filter(series -> span(series) >= LEAST_SPAN_K)
        .filter(series -> series.coldest() <= reference.celsius() + 1e-9)
        .filter(series -> series.warmest() >= reference.celsius() - 1e-9)
        .filter(series -> series.slopePerK() < 0)
        .toList();
  }

  private static double span(TimeSeries series) {
    return series.warmest() - series.coldest();
  }

  private static DevelopmentRate rate(
      double beta, Temperature reference, double coldest, double warmest, String source) {
    return new DevelopmentRate(
        beta,
        reference,
        new TemperatureRange(Temperature.ofCelsius(coldest), Temperature.ofCelsius(warmest)),
        Standing.COMPUTED,
        source);
  }
}
