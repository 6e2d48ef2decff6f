package org.wetside.app.curves;

import java.time.Clock;
import java.util.function.Supplier;
import org.wetside.app.testroll.KeepTestRolls;
import org.wetside.app.times.AddTime;
import org.wetside.store.Database;

/** Front door of measured film and development in one home. */
public final class Sensitometry {
  private final Supplier<Database> database;
  private final Clock clock;
  private final AddTime addTime;

  /** Over one home; nothing is opened before it is needed. */
  public Sensitometry(Supplier<Database> database, Clock clock, AddTime addTime) {
    this.database = database;
    this.clock = clock;
    this.addTime = addTime;
  }

  /** The measured strips. */
  public KeepStrips keepStrips() {
    return new KeepStrips(database, clock);
  }

  /** The test rolls by which a film is measured at home. */
  public KeepTestRolls keepTestRolls() {
    return new KeepTestRolls(database, clock);
  }

  /** Takes a time read from a family into the times. */
  public KeepMeasuredTime keepMeasuredTime() {
    return new KeepMeasuredTime(addTime);
  }
}
