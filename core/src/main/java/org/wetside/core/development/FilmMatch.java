package org.wetside.core.development;

import java.util.List;

/** What a typed film name leads to. */
public sealed interface FilmMatch permits FilmMatch.Found, FilmMatch.Ambiguous, FilmMatch.NotFound {
  /**
   * One film.
   *
   * @param coatings all coatings of that film, newest first; the first is the newest
   */
  record Found(List<Film> coatings) implements FilmMatch {
    public Found {
      coatings = List.copyOf(coatings);
    }

    /** The newest coating. */
    public Film newest() {
      return coatings.get(0);
    }
  }

  /**
   * Several films.
   *
   * @param films the newest coating of each
   */
  record Ambiguous(List<Film> films) implements FilmMatch {
    public Ambiguous {
      films = List.copyOf(films);
    }
  }

  /**
   * None.
   *
   * @param nearest films with the most similar names
   */
  record NotFound(List<Film> nearest) implements FilmMatch {
    public NotFound {
      nearest = List.copyOf(nearest);
    }
  }
}
