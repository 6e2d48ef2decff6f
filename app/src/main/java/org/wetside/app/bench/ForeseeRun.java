package org.wetside.app.bench;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.app.care.BathCare;
import org.wetside.app.care.CareForSteps;
import org.wetside.app.checks.BeforePour;
import org.wetside.core.plan.Load;
import org.wetside.core.process.CueSheet;
import org.wetside.core.quantity.Units;
import org.wetside.core.run.Hands;
import org.wetside.core.run.Placement;
import org.wetside.core.run.RunPlan;
import org.wetside.core.run.RunState;
import org.wetside.store.Database;
import org.wetside.store.Session;

/** A load as the Bench would open it, without opening it: for what is printed beforehand. */
public final class ForeseeRun {
  private final Supplier<Database> database;
  private final Clock clock;

  /**
   * @param database where loads are kept
   * @param clock the moment of the first pour is assumed to be now
   */
  public ForeseeRun(Supplier<Database> database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /**
   * The run as it would stand now; its card has no number.
   *
   * @throws org.wetside.core.quantity.BadValueException when its process or a roll is gone
   */
  public BenchSnapshot of(Load load) {
    Instant now = clock.instant();
    BeforePour before = new CheckLoad(database, clock).of(load, Units.METRIC);
    return database
        .get()
        .read(session -> standing(session, Opening.of(session, load, now), before, now));
  }

  private static BenchSnapshot standing(
      Session session, Opening opening, BeforePour before, Instant now) {
    List<BathCare> care =
        CareForSteps.in(session, opening.steps().steps(), opening.card().developer());
    RunState state = RunState.ready(new RunPlan(opening.steps().steps(), List.of()));
    Placement moments = Placement.of(state, now);
    return new BenchSnapshot(
        now,
        opening.card(),
        state,
        moments,
        moments,
        CueSheet.along(moments.offsets(state.plan()), opening.card().tank()),
        List.of(),
        Hands.unknown(),
        opening.steps().taken(),
        before,
        care,
        Optional.empty(),
        List.of());
  }
}
