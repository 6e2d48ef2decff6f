package org.wetside.app.drawer;

import java.time.Clock;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.app.CannotDoException;
import org.wetside.app.times.FindFilm;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollDraft;
import org.wetside.core.plan.RollState;
import org.wetside.core.quantity.BadValueException;
import org.wetside.store.Database;
import org.wetside.store.RollSearch;
import org.wetside.store.Rolls;
import org.wetside.store.Session;

/** Corrects what is said of a roll. What a load or a record rests on stays as it is. */
public final class ChangeRoll {
  private final Supplier<Database> database;
  private final Clock clock;
  private final FindFilm films;

  /** In this home. */
  public ChangeRoll(Supplier<Database> database, Clock clock, FindFilm films) {
    this.database = database;
    this.clock = clock;
    this.films = films;
  }

  /**
   * Writes a roll anew.
   *
   * @param number its number until now
   * @param said what is said of it from now on; without a number it keeps its own
   * @param filmCode the film chosen from the list of those that may be meant; empty when nothing
   *     was chosen
   * @throws BadValueException when there is no such roll, or the new number is taken
   * @throws CannotDoException when a load or a record rests on what would change
   */
  public Roll change(String number, RollDraft said, Optional<String> filmCode) {
    return database.get().inTransaction(session -> change(session, number, said, filmCode));
  }

  private Roll change(Session session, String number, RollDraft said, Optional<String> chosen) {
    ExposureDay.refuseFuture(said, clock);
    Rolls rolls = new Rolls(session);
    Roll before = require(rolls, number);
    String after = said.number().orElse(before.number());
    refuseWhatIsUsed(before, said, after);
    if (!after.equalsIgnoreCase(before.number()) && rolls.find(after).isPresent()) {
      throw new BadValueException("roll number", after, "there is already a roll of that number");
    }
    boolean sameFilm = said.film().equals(before.described().film());
    Roll roll =
        new Roll(
            after,
            said.withNumber(after),
            chosen
                .or(() -> sameFilm ? before.filmCode() : Optional.empty())
                .or(() -> films.code(said.film())),
            before.addedAt(),
            before.state(),
            before.processedAt());
    rolls.change(before.number(), roll);
    new RollSearch(session).describe(roll);
    return roll;
  }

  private static void refuseWhatIsUsed(Roll before, RollDraft said, String after) {
    RollDraft was = before.described();
    if (before.state() == RollState.WAITING || before.state() == RollState.WITHDRAWN) {
      return;
    }
    if (!after.equals(before.number())) {
      throw new CannotDoException(
          "Roll "
              + before.number()
              + " is "
              + before.state().word()
              + ": its number stands in its load and its record and cannot change any more.");
    }
    boolean another =
        was.size() != said.size() || was.kind() != said.kind() || !was.film().equals(said.film());
    if (before.state() == RollState.LOADED && another) {
      throw new CannotDoException(
          "Roll "
              + before.number()
              + " is in a load: its time was found for "
              + was.film()
              + ". Take it out of the load first, then say what film it is.");
    }
  }

  static Roll require(Rolls rolls, String number) {
    return rolls
        .find(number)
        .orElseThrow(
            () -> new BadValueException("roll", number, "there is no roll of that number"));
  }
}
