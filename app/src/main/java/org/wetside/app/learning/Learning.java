package org.wetside.app.learning;

import java.time.Clock;
import java.util.function.Supplier;
import org.wetside.app.drawer.ReadRecord;
import org.wetside.store.Database;

/** Front door of what is learned from negatives. */
public final class Learning {
  private final Supplier<Database> database;
  private final Clock clock;
  private final ReadRecord records;

  /** In this home. */
  public Learning(Supplier<Database> database, Clock clock, ReadRecord records) {
    this.database = database;
    this.clock = clock;
    this.records = records;
  }

  /** Judges rolls. */
  public JudgeRoll judgeRoll() {
    return new JudgeRoll(database, clock, records);
  }

  /** What was learned so far. */
  public SeeLearned seeLearned() {
    return new SeeLearned(database);
  }

  /** Takes factors into use and out of it. */
  public AcceptFactor acceptFactor() {
    return new AcceptFactor(database, clock);
  }

  /** Takes own indexes into use and out of it. */
  public AcceptIndex acceptIndex() {
    return new AcceptIndex(database, clock);
  }
}
