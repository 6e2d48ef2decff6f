package org.wetside.app.drawer;

import java.util.function.Supplier;
import org.wetside.app.CannotDoException;
import org.wetside.core.plan.Roll;
import org.wetside.core.quantity.BadValueException;
import org.wetside.store.Database;
import org.wetside.store.Rolls;

/** Notes where the negatives of a developed roll are kept. */
public final class FileRoll {
  private static final int MOST = 80;

  private final Supplier<Database> database;

  /** In this home. */
  public FileRoll(Supplier<Database> database) {
    this.database = database;
  }

  /**
   * Files it, or files it elsewhere.
   *
   * @param sleeve sleeve or page in the owner's words, at most 80 characters
   * @throws BadValueException when there is no such roll, or the words are too many
   * @throws CannotDoException when it is not developed yet
   */
  public void file(String number, String sleeve) {
    String words = sleeve.strip();
    if (words.length() > MOST) {
      throw new BadValueException("sleeve or page", words, "at most " + MOST + " characters");
    }
    database
        .get()
        .change(
            session -> {
              Rolls rolls = new Rolls(session);
              Roll roll = ChangeRoll.require(rolls, number);
              if (!roll.state().isDeveloped()) {
                throw new CannotDoException(
                    "Roll "
                        + roll.number()
                        + " is "
                        + roll.state().word()
                        + ": there are no negatives to file yet.");
              }
              rolls.file(roll.number(), words);
            });
  }
}
