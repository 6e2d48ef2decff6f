package org.wetside.app.trial;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.trial.ClipWish;
import org.wetside.core.trial.Trial;
import org.wetside.core.trial.TrialKind;
import org.wetside.store.Database;
import org.wetside.store.Trials;

/**
 * Starts the clock of a test. It runs by the clock of the home from then on, whatever becomes of
 * the screen or the server.
 */
public final class StartTest {
  private final Database database;
  private final Clock clock;

  /** Over one home's database. */
  public StartTest(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /**
   * Begins a test of a bottle. When the same test of it runs already, that one goes on: a key
   * pressed twice begins nothing twice.
   *
   * @param clip what is said of the clip; needed for a clearing time only
   * @throws BadValueException when there is no such bottle, the test says nothing of its bath,
   *     another test of it runs, the clip is not described, or it is said to be in fresh solution
   *     and film has been through the bottle
   */
  public Trial of(String letter, TrialKind kind, Optional<ClipWish> clip) {
    return database.inTransaction(
        session -> {
          Bottle bottle = TestedBottle.require(session, letter, kind);
          Trials trials = new Trials(session);
          Optional<Trial> open = trials.openOf(letter);
          if (open.isPresent()) {
            return goesOn(open.get(), kind);
          }
          Optional<ClipWish> described = TestedBottle.clip(kind, clip);
          if (described.filter(ClipWish::fresh).isPresent()) {
            TestedBottle.requireFresh(bottle);
          }
          return trials.find(trials.start(kind, letter, described, clock.instant())).orElseThrow();
        });
  }

  /**
   * Begins a test of washed film.
   *
   * @param numbers numbers of the rolls it stands for, at least one
   * @throws BadValueException when a number is not in the book, or none is given
   */
  public Trial ofFilm(List<String> numbers) {
    return database.inTransaction(
        session -> {
          Trials trials = new Trials(session);
          List<String> rolls = TestedFilm.require(session, numbers);
          Optional<Trial> open = trials.openOfFilm().filter(trial -> trial.rolls().equals(rolls));
          return open.orElseGet(
              () ->
                  trials
                      .find(trials.startOfFilm(TrialKind.RESIDUE, rolls, clock.instant()))
                      .orElseThrow());
        });
  }

  private static Trial goesOn(Trial open, TrialKind kind) {
    if (open.kind() != kind) {
      throw new BadValueException(
          "test of bottle " + open.bottle(),
          kind.word(),
          "its " + open.kind().word() + " test still runs; judge it first, or leave it");
    }
    return open;
  }
}
