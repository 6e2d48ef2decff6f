package org.wetside.app.drawer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.store.Database;
import org.wetside.store.Loads;
import org.wetside.store.Rolls;
import org.wetside.store.Runs;
import org.wetside.store.Session;

/** Reads everything that was done to a roll. */
public final class ReadRecord {
  private final Supplier<Database> database;

  /** In this home. */
  public ReadRecord(Supplier<Database> database) {
    this.database = database;
  }

  /** The record; empty when there is no such roll. */
  public Optional<RollRecord> of(String number) {
    return database
        .get()
        .read(
            session ->
                new Rolls(session)
                    .find(number)
                    .map(
                        roll ->
                            new RollRecord(
                                roll,
                                new Rolls(session).sleeve(roll.number()),
                                new Loads(session).of(roll.number()),
                                runs(session, roll.number()))));
  }

  private static List<RollRecord.Ran> runs(Session session, String number) {
    Runs runs = new Runs(session);
    List<RollRecord.Ran> found = new ArrayList<>();
    for (long run : runs.ofRoll(number)) {
      found.add(
          new RollRecord.Ran(
              runs.find(run).orElseThrow(), runs.state(run, List.of()), runs.taken(run)));
    }
    return found;
  }
}
