package org.wetside.app.plan;

import java.time.LocalTime;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.quantity.Temperature;
import org.wetside.store.Database;
import org.wetside.store.SettingTable;

/** Keeps what there is tonight; it stays until it is said anew. */
public final class KeepTonight {
  private static final String KITCHEN = "tonight.kitchen_c";
  private static final String TAP = "tonight.tap_c";
  private static final String KETTLE = "tonight.kettle_c";
  private static final String LIMIT = "tonight.limit";

  private final Supplier<Database> database;

  /** In this home. */
  public KeepTonight(Supplier<Database> database) {
    this.database = database;
  }

  /** What was said last. */
  public Tonight now() {
    return database
        .get()
        .read(
            session -> {
              SettingTable table = new SettingTable(session);
              return new Tonight(
                  degrees(table.find(KITCHEN)),
                  degrees(table.find(TAP)),
                  degrees(table.find(KETTLE)),
                  table.find(LIMIT).map(LocalTime::parse));
            });
  }

  /** Says it anew; what is empty is forgotten. */
  public void say(Tonight tonight) {
    database
        .get()
        .change(
            session -> {
              SettingTable table = new SettingTable(session);
              table.put(KITCHEN, tonight.kitchen().map(KeepTonight::text));
              table.put(TAP, tonight.tap().map(KeepTonight::text));
              table.put(KETTLE, tonight.kettle().map(KeepTonight::text));
              table.put(LIMIT, tonight.limit().map(LocalTime::toString));
            });
  }

  private static Optional<Temperature> degrees(Optional<String> stored) {
    return stored.map(text -> Temperature.ofCelsius(Double.parseDouble(text)));
  }

  private static String text(Temperature temperature) {
    return Double.toString(temperature.celsius());
  }
}
