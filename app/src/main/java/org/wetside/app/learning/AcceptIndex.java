package org.wetside.app.learning;

import java.time.Clock;
import java.util.function.Supplier;
import org.wetside.app.CannotDoException;
import org.wetside.core.learning.AcceptedIndex;
import org.wetside.core.learning.FilmInDeveloper;
import org.wetside.core.learning.Lesson;
import org.wetside.core.learning.OwnIndex;
import org.wetside.store.Database;
import org.wetside.store.OwnIndexes;

/**
 * Takes a learned index into use, and out of it again, apart from the factor. What is accepted are
 * the figures of that moment.
 */
public final class AcceptIndex {
  private final Supplier<Database> database;
  private final Clock clock;

  AcceptIndex(Supplier<Database> database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /**
   * Uses the own index of a film in a developer from now on.
   *
   * @param film its name or code
   * @return what is in use now
   * @throws org.wetside.core.quantity.BadValueException when no roll of it was judged
   * @throws CannotDoException when its rolls say nothing of an index
   */
  public OwnIndex accept(String film, String developer) {
    return database
        .get()
        .inTransaction(
            session -> {
              Lesson lesson = LessonNamed.require(session, film, developer);
              OwnIndex index =
                  lesson.index().orElseThrow(() -> new CannotDoException(nothingYet(lesson)));
              new OwnIndexes(session).accept(lesson.of(), index, clock.instant());
              return index;
            });
  }

  /**
   * Uses it no more.
   *
   * @throws CannotDoException when no index of it is in use
   */
  public void takeBack(String film, String developer) {
    boolean done =
        database
            .get()
            .inTransaction(
                session -> {
                  OwnIndexes indexes = new OwnIndexes(session);
                  FilmInDeveloper named = LessonNamed.pair(session, film, developer);
                  return indexes.inUse().stream()
                      .map(AcceptedIndex::of)
                      .filter(one -> one.filmCode().equalsIgnoreCase(named.filmCode()))
                      .filter(one -> one.developer().equalsIgnoreCase(named.developer()))
                      .findFirst()
                      .map(one -> indexes.takeBack(one, clock.instant()))
                      .orElse(false);
                });
    if (!done) {
      throw new CannotDoException(
          "No index of " + film + " in " + developer + " is in use: nothing was taken back.");
    }
  }

  private static String nothingYet(Lesson lesson) {
    return "No roll of "
        + lesson.film()
        + " in "
        + lesson.of().developer()
        + " says anything of an index yet: "
        + lesson.rolls().get(lesson.rolls().size() - 1).index().words()
        + ".";
  }
}
