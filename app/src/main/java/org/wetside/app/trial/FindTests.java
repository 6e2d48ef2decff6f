package org.wetside.app.trial;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.trial.Trial;
import org.wetside.store.Bottles;
import org.wetside.store.Database;
import org.wetside.store.Trials;

/** Tests that run, and those that are over. */
public final class FindTests {
  private static final int MOST = 8;

  private final Database database;

  /** Over one home's database. */
  public FindTests(Database database) {
    this.database = database;
  }

  /**
   * Tests of one bottle, or of film.
   *
   * @param bottle the bottle; empty for film
   * @param open the one that runs
   * @param over the last that are over, the newest first
   */
  public record Found(Optional<Bottle> bottle, Optional<Trial> open, List<Trial> over) {
    /** Keeps an unmodifiable copy. */
    public Found {
      over = List.copyOf(over);
    }
  }

  /** Those of the bottle of that letter on the shelf; empty when there is no such bottle. */
  public Optional<Found> of(String letter) {
    return database.read(
        session -> {
          Trials trials = new Trials(session);
          return new Bottles(session)
              .find(letter)
              .map(
                  bottle ->
                      new Found(
                          Optional.of(bottle), trials.openOf(letter), trials.overOf(letter, MOST)));
        });
  }

  /** Those of washed film. */
  public Found ofFilm() {
    return database.read(
        session -> {
          Trials trials = new Trials(session);
          return new Found(Optional.empty(), trials.openOfFilm(), trials.overOfFilm(MOST));
        });
  }

  /** One test. */
  public Optional<Trial> find(long id) {
    return database.read(session -> new Trials(session).find(id));
  }

  /** Every test that still runs, the first begun in front. */
  public List<Trial> running() {
    return database.read(session -> new Trials(session).open());
  }

  /**
   * The tests that speak for or against one roll: those of its washing that are over, and of each
   * fixer it was fixed in the first ones since; of either the newest first.
   */
  public List<Trial> ofRoll(String number) {
    return database.read(
        session -> {
          Trials trials = new Trials(session);
          return Stream.concat(
                  trials.ofRoll(number).stream(), trials.ofFixersSince(number).stream())
              .toList();
        });
  }
}
