package org.wetside.app.bench;

import java.time.Clock;
import java.util.function.Supplier;
import org.wetside.app.care.CareForSteps;
import org.wetside.app.checks.BeforePour;
import org.wetside.app.checks.Pour;
import org.wetside.app.process.FindProcess;
import org.wetside.core.plan.Load;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.quantity.Units;
import org.wetside.store.Bottles;
import org.wetside.store.Database;
import org.wetside.store.Session;

/** What will be looked at before the first pour of a load, while it is still being mixed. */
public final class CheckLoad {
  private final Supplier<Database> database;
  private final Clock clock;

  /** In this home. */
  public CheckLoad(Supplier<Database> database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /** The checks as they stand now, worded in those units. */
  public BeforePour of(Load load, Units units) {
    Pour pour = database.get().read(session -> pour(session, load, units));
    return BeforePour.of(
        database, pour, new CareForSteps(database).of(pour.steps(), pour.developer()));
  }

  private Pour pour(Session session, Load load, Units units) {
    FilmProcess process =
        FindProcess.in(session, load.process()).withDevelopment(load.time().time());
    LoadSteps steps =
        LoadSteps.of(load, process, new Bottles(session), LearnedHands.with(session, load.tank()));
    return PourOf.load(load, steps, clock.instant(), units);
  }
}
