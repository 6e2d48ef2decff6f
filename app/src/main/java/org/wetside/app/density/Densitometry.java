package org.wetside.app.density;

import java.time.Clock;
import java.util.function.Supplier;
import org.wetside.app.home.Home;
import org.wetside.store.Database;

/** Front door of everything that reads density in one home. */
public final class Densitometry {
  private final Home home;
  private final Supplier<Database> database;
  private final Clock clock;

  /** Over one home; nothing is opened before it is needed. */
  public Densitometry(Home home, Supplier<Database> database, Clock clock) {
    this.home = home;
    this.database = database;
    this.clock = clock;
  }

  /** The step tablets. */
  public KeepTablets keepTablets() {
    return new KeepTablets(database);
  }

  /** The instruments with their calibrations. */
  public KeepInstruments keepInstruments() {
    return new KeepInstruments(database);
  }

  /** Calibrates an instrument by a tablet. */
  public Calibrate calibrate() {
    return new Calibrate(database, clock);
  }

  /** The pictures kept in the home. */
  public KeepPictures keepPictures() {
    return new KeepPictures(home, database);
  }

  /** Measures patches of a picture kept in the home. */
  public ReadPatches readPatches() {
    return new ReadPatches(home, database);
  }

  /** Turns what was measured into densities. */
  public ConvertPatches convertPatches() {
    return new ConvertPatches(database);
  }
}
