package org.wetside.app.bench;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.app.CannotDoException;
import org.wetside.app.plan.KeepTonight;
import org.wetside.app.times.AskRate;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.LoadState;
import org.wetside.core.plan.Recipe;
import org.wetside.core.plan.Roll;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.run.DoseBasis;
import org.wetside.store.Database;
import org.wetside.store.Loads;
import org.wetside.store.Rolls;
import org.wetside.store.Runs;
import org.wetside.store.Session;
import org.wetside.store.Tanks;

/**
 * Opens a run for a load: copies all it needs, so that nothing that changes later changes the
 * record. Nothing is poured by it; the first pour is an event.
 */
public final class StartRun {
  private final Supplier<Database> database;
  private final Clock clock;
  private final Bench bench;

  /**
   * @param database where loads and runs are kept
   * @param clock when it is opened
   * @param bench the conductor that leads it
   */
  public StartRun(Supplier<Database> database, Clock clock, Bench bench) {
    this.database = database;
    this.clock = clock;
    this.bench = bench;
  }

  /**
   * Opens the run of a load; the one that is already open when there is one.
   *
   * @throws BadValueException when there is no such load, or its process or a roll is gone
   * @throws CannotDoException when the load was already run or taken apart
   */
  public BenchSnapshot of(long load) {
    Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
    Optional<DoseBasis> dose = dose(load);
    long run = database.get().inTransaction(session -> open(session, load, now, dose));
    return bench.opened(run);
  }

  /** Loads whose run has not been opened yet, in the order in which they are meant to start. */
  public List<Load> waiting() {
    return database
        .get()
        .read(
            session ->
                new Loads(session)
                    .in(LoadState.PLANNED).stream()
                        .filter(load -> new Runs(session).ofLoad(load.id()).isEmpty())
                        .toList());
  }

  private static long open(Session session, long id, Instant now, Optional<DoseBasis> dose) {
    Load load =
        new Loads(session)
            .find(id)
            .orElseThrow(
                () -> new BadValueException("load", Long.toString(id), "there is no such load"));
    Optional<Long> open = new Runs(session).ofLoad(id);
    if (open.isPresent()) {
      return open.get();
    }
    if (load.state() != LoadState.PLANNED) {
      throw new CannotDoException("load " + id + " is " + load.state().word());
    }
    Opening opening = Opening.of(session, load, now);
    LoadSteps steps = opening.steps();
    long run = new Runs(session).add(opening.card(), steps.steps(), steps.taken()).id();
    dose.ifPresent(basis -> new Runs(session).keepDose(run, basis));
    new Tanks(session)
        .find(load.tank())
        .ifPresent(tank -> new Runs(session).describeTank(run, tank.described()));
    return run;
  }

  /** What a reading of the developer will be reckoned by, for the first film of the load. */
  private Optional<DoseBasis> dose(long id) {
    Optional<Load> load = database.get().read(session -> new Loads(session).find(id));
    Optional<Roll> first =
        load.flatMap(
            known ->
                database.get().read(session -> new Rolls(session).find(known.numbers().get(0))));
    if (load.isEmpty() || first.isEmpty()) {
      return Optional.empty();
    }
    Recipe recipe = load.get().recipe();
    Optional<Temperature> kitchen = new KeepTonight(database).now().kitchen();
    return new AskRate(database)
        .around(
            first.get().described().film(),
            recipe.developer(),
            recipe.dilution(),
            recipe.temperature())
        .map(
            rate ->
                new DoseBasis(
                    rate, kitchen, DoseBasis.USUAL_TANK_J_PER_K, Optional.of(load.get().fill())));
  }
}
