package org.wetside.app.times;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.development.ContrastEffect;
import org.wetside.core.development.Film;
import org.wetside.core.development.TemperatureRates;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.thermal.DevelopmentRate;
import org.wetside.store.Database;

/**
 * Finds how fast a developer works at other temperatures and what more of it does to contrast, if
 * anything is printed of it.
 */
public final class AskRate {
  private final TimeShelf shelf;

  /** Over this home's own times and the published ones. */
  public AskRate(Supplier<Database> database) {
    shelf = new TimeShelf(database);
  }

  /**
   * The rate of a developer around a temperature; empty for a developer of which nothing is known.
   *
   * @param film name or code, as it was typed; an unknown one is no film
   */
  public Optional<DevelopmentRate> around(
      String film, String developer, Dilution dilution, Temperature reference) {
    TimeShelf.Now now = shelf.now();
    return known(now, developer)
        .flatMap(
            name ->
                new TemperatureRates(now.library())
                    .around(code(now, film, name), name, dilution, reference));
  }

  /** What a development did to contrast that was worth more or less than planned. */
  public Optional<ContrastEffect> contrast(
      String film, String developer, Dilution dilution, Duration planned, Duration reached) {
    TimeShelf.Now now = shelf.now();
    return known(now, developer)
        .flatMap(
            name ->
                ContrastEffect.of(
                    now.library(),
                    code(now, film, name),
                    name,
                    dilution,
                    TimeSpan.toSeconds(planned),
                    TimeSpan.toSeconds(reached)));
  }

  private static Optional<String> known(TimeShelf.Now now, String developer) {
    try {
      return Optional.of(now.developers().require(developer).name());
    } catch (BadValueException unknown) {
      return Optional.empty();
    }
  }

  private static String code(TimeShelf.Now now, String film, String developer) {
    return FilmNames.maybe(now.films(), film)
        .filter(coatings -> !coatings.isEmpty())
        .map(coatings -> withRate(coatings, developer, now))
        .orElse("");
  }

  private static String withRate(List<Film> coatings, String developer, TimeShelf.Now now) {
    return coatings.stream()
        .map(Film::code)
        .filter(code -> now.library().has(code, developer))
        .findFirst()
        .orElse(coatings.get(0).code());
  }
}
