package org.wetside.app.equipment;

import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.thermal.Thermometer;
import org.wetside.core.thermal.ThermometerOffset;
import org.wetside.store.Database;
import org.wetside.store.Thermometers;

/** The thermometers of the user and what is known of their error. */
public final class KeepThermometers {
  private final Database database;

  /** Over one home's database. */
  public KeepThermometers(Database database) {
    this.database = database;
  }

  /** All thermometers by name, each with its last offset. */
  public List<Thermometer> all() {
    return database.read(session -> new Thermometers(session).all());
  }

  /** One thermometer, its name in any case. */
  public Optional<Thermometer> find(String name) {
    return database.read(session -> new Thermometers(session).find(name));
  }

  /** Every comparison of a thermometer, the newest first. */
  public List<ThermometerOffset> history(String name) {
    return database.read(session -> new Thermometers(session).history(name));
  }

  /**
   * Adds a thermometer.
   *
   * @throws BadValueException when there is one of that name, or the name is empty or too long
   */
  public void add(String name) {
    String bare = name.strip();
    if (bare.isEmpty() || bare.length() > 40) {
      throw new BadValueException("name of the thermometer", name, "1 to 40 characters");
    }
    database.change(
        session -> {
          Thermometers thermometers = new Thermometers(session);
          if (thermometers.find(bare).isPresent()) {
            throw new BadValueException(
                "name of the thermometer", bare, "there is one of that name; choose another");
          }
          thermometers.add(bare);
        });
  }

  /**
   * Notes a comparison.
   *
   * @throws BadValueException when there is no such thermometer
   */
  public void compared(String name, ThermometerOffset offset) {
    database.change(
        session -> {
          Thermometers thermometers = new Thermometers(session);
          if (thermometers.find(name).isEmpty()) {
            throw new BadValueException("thermometer", name, "there is none of that name");
          }
          thermometers.compared(name, offset);
        });
  }

  /** Takes a thermometer away; false when there is none of that name. */
  public boolean remove(String name) {
    return database.inTransaction(session -> new Thermometers(session).remove(name));
  }
}
