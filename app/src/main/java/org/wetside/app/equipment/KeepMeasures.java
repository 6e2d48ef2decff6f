package org.wetside.app.equipment;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.chemistry.Balance;
import org.wetside.core.chemistry.Measure;
import org.wetside.core.quantity.BadValueException;
import org.wetside.store.Database;
import org.wetside.store.OwnMeasures;

/**
 * The balance, and the syringes and graduates of the house: written down once, taken wherever
 * something is weighed or measured out and nothing else is said.
 */
public final class KeepMeasures {
  private static final int MOST = 40;
  private static final int LONGEST_NAME = 40;

  private final Supplier<Database> database;

  /** In this home. */
  public KeepMeasures(Supplier<Database> database) {
    this.database = database;
  }

  /** The balance; empty until somebody has said what it shows. */
  public Optional<Balance> balance() {
    return database.get().read(session -> new OwnMeasures(session).balance());
  }

  /** Writes the balance down in place of the one before; a step of zero is refused by its type. */
  public void put(Balance balance) {
    database.get().change(session -> new OwnMeasures(session).put(balance));
  }

  /** Forgets the balance; false when none was written down. */
  public boolean removeBalance() {
    return database.get().inTransaction(session -> new OwnMeasures(session).removeBalance());
  }

  /** All syringes and graduates, the smallest first. */
  public List<Measure> all() {
    return database.get().read(session -> new OwnMeasures(session).all());
  }

  /**
   * Writes a measure in place of the one of that name, or anew.
   *
   * @throws BadValueException when its name is empty or too long, or there are forty already
   */
  public void put(Measure measure) {
    String name = measure.name().strip();
    if (name.isEmpty() || name.length() > LONGEST_NAME) {
      throw new BadValueException("name of the measure", name, "1 to 40 characters");
    }
    Measure named = new Measure(name, measure.capacity(), measure.division(), measure.standing());
    database
        .get()
        .change(
            session -> {
              OwnMeasures own = new OwnMeasures(session);
              boolean known = own.all().stream().anyMatch(one -> one.name().equalsIgnoreCase(name));
              if (!known && own.all().size() >= MOST) {
                throw new BadValueException("measures", MOST + "", "at most " + MOST + " of them");
              }
              own.put(named);
            });
  }

  /** Takes a measure away; false when there is none of that name. */
  public boolean remove(String name) {
    return database.get().inTransaction(session -> new OwnMeasures(session).remove(name));
  }
}
