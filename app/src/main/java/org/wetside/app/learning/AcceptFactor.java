package org.wetside.app.learning;

import java.time.Clock;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.app.CannotDoException;
import org.wetside.core.development.OwnFactor;
import org.wetside.core.learning.AcceptedFactor;
import org.wetside.core.learning.Belief;
import org.wetside.core.learning.FilmInDeveloper;
import org.wetside.core.learning.Lesson;
import org.wetside.store.Database;
import org.wetside.store.OwnFactors;
import org.wetside.store.Session;

/**
 * Takes a learned factor into use, and out of it again. What is accepted are the figures of that
 * moment: what later rolls teach is offered anew and never slips in by itself.
 */
public final class AcceptFactor {
  private final Supplier<Database> database;
  private final Clock clock;

  AcceptFactor(Supplier<Database> database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /**
   * Uses the factor of a film in a developer from now on.
   *
   * @param film its name or code
   * @return what is in use now
   * @throws org.wetside.core.quantity.BadValueException when no roll of it was judged
   * @throws CannotDoException when its rolls say nothing of a factor
   */
  public OwnFactor accept(String film, String developer) {
    return database
        .get()
        .inTransaction(
            session -> {
              Lesson lesson = LessonNamed.require(session, film, developer);
              Belief belief =
                  lesson
                      .time()
                      .orElseThrow(() -> new CannotDoException(nothingYet(lesson)))
                      .belief();
              OwnFactor factor =
                  new OwnFactor(
                      lesson.of().filmCode(),
                      lesson.of().developer(),
                      belief.mean(),
                      belief.sd(),
                      belief.rolls());
              new OwnFactors(session).accept(factor, clock.instant());
              return factor;
            });
  }

  /**
   * Uses what is printed again.
   *
   * @throws CannotDoException when no factor of it is in use
   */
  public void takeBack(String film, String developer) {
    boolean done =
        database
            .get()
            .inTransaction(
                session -> {
                  OwnFactors factors = new OwnFactors(session);
                  return inUse(session, factors, film, developer)
                      .map(
                          one -> factors.takeBack(one.filmCode(), one.developer(), clock.instant()))
                      .orElse(false);
                });
    if (!done) {
      throw new CannotDoException(
          "No factor of " + film + " in " + developer + " is in use: nothing was taken back.");
    }
  }

  private static Optional<OwnFactor> inUse(
      Session session, OwnFactors factors, String film, String developer) {
    FilmInDeveloper named = LessonNamed.pair(session, film, developer);
    return factors.inUse().stream()
        .map(AcceptedFactor::factor)
        .filter(one -> one.filmCode().equalsIgnoreCase(named.filmCode()))
        .filter(one -> one.developer().equalsIgnoreCase(named.developer()))
        .findFirst();
  }

  private static String nothingYet(Lesson lesson) {
    return "No roll of "
        + lesson.film()
        + " in "
        + lesson.of().developer()
        + " says anything of a factor yet: "
        + lesson.rolls().get(lesson.rolls().size() - 1).time().words()
        + ".";
  }
}
