package org.wetside.app.times;

import java.util.List;
import java.util.Optional;
import org.wetside.core.development.Developer;
import org.wetside.core.development.Film;
import org.wetside.core.development.TimeWarning;
import org.wetside.core.learning.AcceptedIndex;
import org.wetside.core.learning.FilmInDeveloper;
import org.wetside.core.learning.OwnIndex;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.Stops;

/**
 * What an own index in use means for a question: film exposed at it has the shadows that its user
 * wants, and is developed like the rolls the index was learned from; it is no pull and no push.
 *
 * @param makers index to ask the maker's times for
 * @param saying what has to be said beside the time; empty where nothing is in use
 */
record IndexInUse(ExposureIndex makers, Optional<TimeWarning> saying) {
  /**
   * As near counts as the same: a dial of thirds lies within a sixth of a stop of every value, and
   * its numbers are themselves rounded.
   */
  private static final double SAME_STOPS = 0.2;

  static IndexInUse of(
      List<AcceptedIndex> inUse, Film film, Developer developer, ExposureIndex asked) {
    return find(inUse, film, developer)
        .map(own -> of(own, asked))
        .orElseGet(() -> new IndexInUse(asked, Optional.empty()));
  }

  /** The one of a film in a developer. */
  static Optional<OwnIndex> find(List<AcceptedIndex> inUse, Film film, Developer developer) {
    FilmInDeveloper pair = new FilmInDeveloper(film.code(), developer.name());
    return inUse.stream()
        .filter(one -> one.of().equals(pair))
        .map(AcceptedIndex::index)
        .findFirst();
  }

  private static IndexInUse of(OwnIndex own, ExposureIndex asked) {
    Stops off = own.middle().stopsTo(asked);
    if (off.abs().count() > SAME_STOPS) {
      return new IndexInUse(
          asked, Optional.of(new TimeWarning.OffOwnIndex(asked, own.middle(), off)));
    }
    return new IndexInUse(
        own.exposed(),
        asked.equals(own.exposed())
            ? Optional.empty()
            : Optional.of(new TimeWarning.CountsAsMakers(asked, own.exposed())));
  }
}
