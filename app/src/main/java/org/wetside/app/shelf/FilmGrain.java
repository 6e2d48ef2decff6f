package org.wetside.app.shelf;

import java.util.List;
import org.wetside.core.development.Film;
import org.wetside.core.development.FilmCatalogue;
import org.wetside.core.development.FilmMatch;
import org.wetside.core.plan.Roll;
import org.wetside.core.shelf.FilmUse;
import org.wetside.reference.DevelopmentTimes;

/** Whether a roll is of tabular grain, and so counts more in a fixer. */
public final class FilmGrain {
  private static final class Lazy {
    private static final FilmCatalogue FILMS = DevelopmentTimes.films();
  }

  private FilmGrain() {}

  /** A roll as a bath counts it. */
  public static FilmUse use(Roll roll) {
    return new FilmUse(roll.number(), roll.filmAndIndex(), roll.amount(), tabular(roll));
  }

  /**
   * Whether every film that may be meant is of tabular grain. A film that the catalogue does not
   * know counts as an ordinary one.
   */
  public static boolean tabular(Roll roll) {
    return roll.filmCode()
        .flatMap(Lazy.FILMS::byCode)
        .map(Film::tabularGrain)
        .orElseGet(() -> tabular(roll.described().film()));
  }

  /** The same for a film by the name a person wrote. */
  public static boolean tabular(String film) {
    FilmMatch match = Lazy.FILMS.find(film);
    if (match instanceof FilmMatch.Found found) {
      return all(found.coatings());
    }
    return match instanceof FilmMatch.Ambiguous several && all(several.films());
  }

  private static boolean all(List<Film> films) {
    return !films.isEmpty() && films.stream().allMatch(Film::tabularGrain);
  }
}
