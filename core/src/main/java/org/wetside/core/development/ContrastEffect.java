package org.wetside.core.development;

import java.util.Optional;
import java.util.OptionalDouble;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.source.Citation;

/**
 * What more or less development does to contrast, read off a series of contrast against time.
 *
 * @param measure what contrast means in the series, for example {@code contrast index}
 * @param planned contrast at the planned time [-]
 * @param reached contrast at the time the development was worth [-]
 * @param citation where the series stands
 */
public record ContrastEffect(String measure, double planned, double reached, Citation citation) {

  /**
   * The effect; empty where no series of this film in this developer reaches over both times.
   *
   * @param plannedSeconds above 0
   * @param reachedSeconds above 0
   */
  public static Optional<ContrastEffect> of(
      TimeLibrary library,
      String filmCode,
      String developer,
      Dilution dilution,
      double plannedSeconds,
      double reachedSeconds) {
    for (ContrastSeries series : library.contrast()) {
      boolean same =
          series.filmCode().equals(filmCode)
              && series.developer().equals(developer)
              && series.dilution().label().equals(dilution.label());
      if (same) {
        OptionalDouble planned = series.curve().contrastAt(plannedSeconds);
        OptionalDouble reached = series.curve().contrastAt(reachedSeconds);
        if (planned.isPresent() && reached.isPresent()) {
          return Optional.of(
              new ContrastEffect(
                  series.measure(),
                  planned.getAsDouble(),
                  reached.getAsDouble(),
                  series.citation()));
        }
      }
    }
    return Optional.empty();
  }
}
