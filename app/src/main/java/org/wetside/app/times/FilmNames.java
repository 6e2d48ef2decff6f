package org.wetside.app.times;

import java.util.List;
import java.util.Optional;
import org.wetside.core.development.Developer;
import org.wetside.core.development.Film;
import org.wetside.core.development.FilmCatalogue;
import org.wetside.core.development.FilmMatch;
import org.wetside.core.development.TimeLibrary;
import org.wetside.core.quantity.BadValueException;

/** From a typed name to one coating. */
final class FilmNames {
  private FilmNames() {}

  /**
   * The coatings of the one film meant, newest first.
   *
   * @throws BadValueException when several films or none could be meant
   */
  static List<Film> coatings(FilmCatalogue films, String typed) {
    return maybe(films, typed)
        .orElseThrow(
            () ->
                new BadValueException(
                    "film",
                    typed,
                    "none of that name is known; the nearest are "
                        + labels(((FilmMatch.NotFound) films.find(typed)).nearest())
                        + ". A time for a film of your own is kept with: wetside times --add"));
  }

  /** The coatings, or empty when no film of that name is known. */
  static Optional<List<Film>> maybe(FilmCatalogue films, String typed) {
    FilmMatch match = films.find(typed);
    if (match instanceof FilmMatch.Found found) {
      return Optional.of(found.coatings());
    }
    if (match instanceof FilmMatch.Ambiguous several) {
      throw new BadValueException(
          "film", typed, "it may be " + labels(several.films()) + "; write one of them");
    }
    return Optional.empty();
  }

  /** The newest coating that has a time in this developer, else in any, else the newest. */
  static Film withTimes(List<Film> coatings, Developer developer, TimeLibrary library) {
    return coatings.stream()
        .filter(film -> library.has(film.code(), developer.name()))
        .findFirst()
        .or(() -> coatings.stream().filter(film -> library.hasFilm(film.code())).findFirst())
        .orElse(coatings.get(0));
  }

  private static String labels(List<Film> films) {
    return String.join(", ", films.stream().map(Film::label).toList());
  }
}
