package org.wetside.app.drawer;

import java.util.List;
import java.util.function.Supplier;
import org.wetside.app.CannotDoException;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollState;
import org.wetside.store.Database;
import org.wetside.store.Rolls;

/** Takes a roll out of the drawer without developing it; it is kept and can come back. */
public final class WithdrawRoll {
  private final Supplier<Database> database;

  /** In this home. */
  public WithdrawRoll(Supplier<Database> database) {
    this.database = database;
  }

  /**
   * Takes it out.
   *
   * @throws org.wetside.core.quantity.BadValueException when there is no such roll
   * @throws CannotDoException when it does not wait
   */
  public void withdraw(String number) {
    move(number, RollState.WAITING, RollState.WITHDRAWN);
  }

  /**
   * Puts a withdrawn roll back.
   *
   * @throws org.wetside.core.quantity.BadValueException when there is no such roll
   * @throws CannotDoException when it was not withdrawn
   */
  public void putBack(String number) {
    move(number, RollState.WITHDRAWN, RollState.WAITING);
  }

  private void move(String number, RollState from, RollState to) {
    database
        .get()
        .change(
            session -> {
              Rolls rolls = new Rolls(session);
              Roll roll = ChangeRoll.require(rolls, number);
              if (roll.state() != from) {
                throw new CannotDoException(
                    "Roll "
                        + roll.number()
                        + " is "
                        + roll.state().word()
                        + ", only a roll that is "
                        + from.word()
                        + " can be "
                        + (to == RollState.WITHDRAWN ? "taken out of" : "put back into")
                        + " the drawer."
                        + (roll.state() == RollState.LOADED
                            ? " Take it out of its load first."
                            : ""));
              }
              rolls.move(List.of(roll.number()), to);
            });
  }
}
