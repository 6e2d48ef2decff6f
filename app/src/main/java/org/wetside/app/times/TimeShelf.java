package org.wetside.app.times;

import java.time.Duration;
import java.util.List;
import java.util.function.Supplier;
import org.wetside.core.development.Developer;
import org.wetside.core.development.DeveloperCatalogue;
import org.wetside.core.development.EntryIndex;
import org.wetside.core.development.Film;
import org.wetside.core.development.FilmCatalogue;
import org.wetside.core.development.OwnFactor;
import org.wetside.core.development.TimeEntry;
import org.wetside.core.development.TimeLibrary;
import org.wetside.core.learning.AcceptedFactor;
import org.wetside.core.learning.AcceptedIndex;
import org.wetside.reference.DevelopmentTimes;
import org.wetside.store.Database;
import org.wetside.store.OwnFactors;
import org.wetside.store.OwnIndexes;
import org.wetside.store.OwnTimes;

/** The published times with the user's own beside them, as they stand now. */
final class TimeShelf {
  /** Read once for the life of the program, at the first question. */
  private static final class Published {
    private static final FilmCatalogue FILMS = DevelopmentTimes.films();
    private static final DeveloperCatalogue DEVELOPERS = DevelopmentTimes.developers();
    private static final TimeLibrary LIBRARY = DevelopmentTimes.library();

    private Published() {}
  }

  private final Supplier<Database> database;

  TimeShelf(Supplier<Database> database) {
    this.database = database;
  }

  /**
   * Everything one question needs, of one moment.
   *
   * @param films films of the catalogue and of the user
   * @param developers developers of the catalogue and of the user
   * @param library times
   * @param indexes own indexes in use
   */
  record Now(
      FilmCatalogue films,
      DeveloperCatalogue developers,
      TimeLibrary library,
      List<AcceptedIndex> indexes) {
    private Now withIndexes(List<AcceptedIndex> accepted) {
      return new Now(films, developers, library, accepted);
    }

    private Now withFactors(List<OwnFactor> accepted) {
      return accepted.isEmpty()
          ? this
          : new Now(films, developers, library.withFactors(accepted), indexes);
    }
  }

  /** With the factors and indexes that the user has accepted. */
  Now now() {
    return database
        .get()
        .read(
            session ->
                with(new OwnTimes(session).inUse())
                    .withIndexes(new OwnIndexes(session).inUse())
                    .withFactors(
                        new OwnFactors(session)
                            .inUse().stream().map(AcceptedFactor::factor).toList()));
  }

  /** As if no factor had been learned; an own index still says which of the maker's it is. */
  Now withoutFactors() {
    return database
        .get()
        .read(
            session ->
                with(new OwnTimes(session).inUse()).withIndexes(new OwnIndexes(session).inUse()));
  }

  static Now with(List<TimeEntry> own) {
    if (own.isEmpty()) {
      return new Now(Published.FILMS, Published.DEVELOPERS, Published.LIBRARY, List.of());
    }
    List<Film> films =
        own.stream()
            .map(TimeEntry::filmCode)
            .distinct()
            .filter(code -> Published.FILMS.byCode(code).isEmpty())
            .map(Film::ownNamed)
            .toList();
    List<Developer> developers =
        own.stream()
            .map(TimeEntry::developer)
            .distinct()
            .filter(
                name ->
                    Published.DEVELOPERS.developers().stream()
                        .noneMatch(known -> known.name().equals(name)))
            .map(Developer::ownNamed)
            .toList();
    return new Now(
        Published.FILMS.with(films),
        Published.DEVELOPERS.with(developers),
        Published.LIBRARY.withOwn(EntryIndex.of(own)),
        List.of());
  }

  static Duration shortestInHandTank() {
    return Published.LIBRARY.shortestInHandTank();
  }

  /** Begins to read what is published; whoever needs it meanwhile waits for the same reading. */
  static void readAhead() {
    Thread reading = new Thread(TimeShelf::shortestInHandTank, "published times");
    reading.setDaemon(true);
    reading.start();
  }

  Supplier<Database> database() {
    return database;
  }
}
