package org.wetside.app.times;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.development.Film;
import org.wetside.core.development.FilmMatch;
import org.wetside.store.Database;

/** From the name a person typed to a film of the catalogue, or of their own. */
public final class FindFilm {
  private final TimeShelf shelf;

  /** In this home. */
  public FindFilm(Supplier<Database> database) {
    this.shelf = new TimeShelf(database);
  }

  /** What the name leads to. */
  public FilmMatch match(String typed) {
    return shelf.now().films().find(typed);
  }

  /** Code of the one film meant; empty when there are several or none. */
  public Optional<String> code(String typed) {
    return match(typed) instanceof FilmMatch.Found found
        ? Optional.of(found.newest().code())
        : Optional.empty();
  }

  /** The films that may be meant; empty unless there are several. */
  public List<Film> candidates(String typed) {
    return match(typed) instanceof FilmMatch.Ambiguous several ? several.films() : List.of();
  }
}
