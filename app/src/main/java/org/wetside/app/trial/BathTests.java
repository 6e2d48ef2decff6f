package org.wetside.app.trial;

import java.time.Clock;
import java.util.function.Supplier;
import org.wetside.store.Database;

/** Front door of the timed tests of baths and of washed film in one home. */
public final class BathTests {
  private final Supplier<Database> database;
  private final Clock clock;

  /** Over one home; nothing is opened before it is needed. */
  public BathTests(Supplier<Database> database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /** Starts the clock of a test. */
  public StartTest startTest() {
    return new StartTest(database.get(), clock);
  }

  /** Judges tests. */
  public JudgeTest judgeTest() {
    return new JudgeTest(database.get(), clock);
  }

  /** Tests that run, and those that are over. */
  public FindTests findTests() {
    return new FindTests(database.get());
  }
}
