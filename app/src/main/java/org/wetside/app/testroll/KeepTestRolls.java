package org.wetside.app.testroll;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.strip.FilmStrip;
import org.wetside.core.testroll.KeptTestRoll;
import org.wetside.core.testroll.PieceDeveloped;
import org.wetside.core.testroll.StepDone;
import org.wetside.core.testroll.TestRoll;
import org.wetside.core.testroll.TestStep;
import org.wetside.core.testroll.TypedReading;
import org.wetside.store.Database;
import org.wetside.store.Session;
import org.wetside.store.Strips;
import org.wetside.store.TestRolls;

/**
 * The test rolls of this home: begins them, ticks what was done, keeps what was typed and makes the
 * curves. Every act is written down at once, so that weeks may pass before the next.
 */
public final class KeepTestRolls {
  private static final String THING = "test roll";
  private static final int LONGEST_NOTE = 400;
  private static final int LONGEST_READING = 20;

  private final Supplier<Database> database;
  private final Clock clock;

  /** In this home. */
  public KeepTestRolls(Supplier<Database> database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /** All in use, the newest first. */
  public List<KeptTestRoll> all() {
    return database.get().read(session -> new TestRolls(session).all());
  }

  /** One in use. */
  public Optional<KeptTestRoll> find(long id) {
    return database.get().read(session -> new TestRolls(session).find(id));
  }

  /**
   * Begins a roll.
   *
   * @throws BadValueException when it is not complete
   */
  public KeptTestRoll begin(TestRoll roll) {
    return database
        .get()
        .inTransaction(
            session -> {
              TestRolls rolls = new TestRolls(session);
              return rolls.find(rolls.add(roll.complete(), clock.instant())).orElseThrow();
            });
  }

  /**
   * Plans a roll anew; possible until its frames are exposed.
   *
   * @throws BadValueException when it is exposed, not there, or the new plan is not complete
   */
  public KeptTestRoll replan(long id, TestRoll roll) {
    return changed(
        id,
        (rolls, kept) -> {
          if (kept.isExposed()) {
            throw new BadValueException(
                THING, String.valueOf(id), "its frames are exposed: the plan stands");
          }
          rolls.replan(id, roll.complete());
        });
  }

  /**
   * Ticks a step that is done by hand alone.
   *
   * @param note in any words, at most 400 characters
   * @throws BadValueException for a step that is ticked by what it yields, and when there is no
   *     such roll
   */
  public KeptTestRoll tick(long id, TestStep step, String note) {
    if (step.piece() != 0) {
      throw new BadValueException(
          "step of a test roll",
          step.word(),
          step.part() == TestStep.Part.DEVELOP
              ? "say how long the piece was developed; that ticks it"
              : "keep the readings of the piece; its curve ticks it");
    }
    return changed(id, (rolls, kept) -> rolls.tick(id, step, done(note)));
  }

  /**
   * Takes the tick of a step away, whatever it is; what was typed stays.
   *
   * @throws BadValueException when there is no such roll
   */
  public KeptTestRoll untick(long id, TestStep step) {
    return changed(id, (rolls, kept) -> rolls.untick(id, step));
  }

  /**
   * Writes down how a piece was developed, and ticks that. Said otherwise than before, its curve is
   * to be made again.
   *
   * @param piece 1 to 3
   * @param note in any words
   * @throws BadValueException when there is no such roll or piece
   */
  public KeptTestRoll develop(long id, int piece, PieceDeveloped developed, String note) {
    TestStep step = step(TestStep.Part.DEVELOP, piece);
    return changed(
        id,
        (rolls, kept) -> {
          if (!developed.equals(kept.developed().get(piece))) {
            rolls.untick(id, step(TestStep.Part.READ, piece));
          }
          rolls.develop(id, piece, developed);
          rolls.tick(id, step, done(note));
        });
  }

  /**
   * Keeps what was typed for frames, number or not. Where it is another than before, the curve of
   * the piece is to be made again.
   *
   * @throws BadValueException when there is no such roll, or more was typed than any density needs
   */
  public KeptTestRoll type(long id, List<TypedReading> readings) {
    return changed(
        id,
        (rolls, kept) -> {
          for (TypedReading reading : readings) {
            requireShort(reading, reading.first());
            requireShort(reading, reading.second());
            if (!reading.equals(kept.typedFor(reading.frame()))) {
              kept.pieceReadAt(reading.frame())
                  .ifPresent(piece -> rolls.untick(id, step(TestStep.Part.READ, piece)));
            }
            rolls.type(id, reading);
          }
        });
  }

  /**
   * Keeps the curve of a piece, in place of one that was read before, and ticks its step.
   *
   * @param strip made from what was typed
   * @throws BadValueException when there is no such roll or piece
   */
  public KeptTestRoll keepCurve(long id, int piece, FilmStrip strip) {
    TestStep step = step(TestStep.Part.READ, piece);
    return database
        .get()
        .inTransaction(
            session -> {
              TestRolls rolls = new TestRolls(session);
              KeptTestRoll kept = require(rolls, id);
              Strips strips = new Strips(session);
              long curve = strips.add(strip, clock.instant());
              Long before = kept.curves().get(piece);
              if (before != null) {
                strips.withdraw(before, Optional.of(curve), clock.instant());
              }
              rolls.join(id, piece, curve);
              rolls.tick(id, step, done(""));
              return require(rolls, id);
            });
  }

  /** Puts a roll away; it stays on file, and its curves stay in use. False when there is none. */
  public boolean putAway(long id) {
    return database
        .get()
        .inTransaction(session -> new TestRolls(session).putAway(id, clock.instant()));
  }

  private static TestStep step(TestStep.Part part, int piece) {
    for (TestStep step : TestStep.values()) {
      if (step.part() == part && step.piece() == piece) {
        return step;
      }
    }
    throw new BadValueException("piece", String.valueOf(piece), "a roll is cut into pieces 1 to 3");
  }

  private StepDone done(String note) {
    String bare = note.strip();
    if (bare.length() > LONGEST_NOTE) {
      throw new BadValueException(
          "note", bare.length() + " characters", "at most " + LONGEST_NOTE + " characters");
    }
    return new StepDone(clock.instant(), bare);
  }

  private static void requireShort(TypedReading reading, String typed) {
    if (typed.length() > LONGEST_READING) {
      throw new BadValueException(
          "density of frame " + reading.frame(),
          typed,
          "at most " + LONGEST_READING + " characters, as in 0.35");
    }
  }

  /** One change of a roll, with what is known of it before. */
  private KeptTestRoll changed(long id, BiConsumer<TestRolls, KeptTestRoll> change) {
    Function<Session, KeptTestRoll> act =
        session -> {
          TestRolls rolls = new TestRolls(session);
          change.accept(rolls, require(rolls, id));
          return require(rolls, id);
        };
    return database.get().inTransaction(act);
  }

  private static KeptTestRoll require(TestRolls rolls, long id) {
    return rolls
        .find(id)
        .orElseThrow(
            () -> new BadValueException(THING, String.valueOf(id), "there is no such test roll"));
  }
}
