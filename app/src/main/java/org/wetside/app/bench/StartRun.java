package org.wetside.app.bench;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.app.CannotDoException;
import org.wetside.app.plan.KeepTonight;
import org.wetside.app.process.FindProcess;
import org.wetside.app.times.AskRate;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.LoadState;
import org.wetside.core.plan.Recipe;
import org.wetside.core.plan.Roll;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.DoseBasis;
import org.wetside.core.run.Hands;
import org.wetside.core.run.RollInTank;
import org.wetside.core.run.RunCard;
import org.wetside.store.Bottles;
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
    FilmProcess process =
        FindProcess.in(session, load.process()).withDevelopment(load.time().time());
    Hands hands = LearnedHands.with(session, load.tank());
    LoadSteps steps = LoadSteps.of(load, process, new Bottles(session), hands);
    List<RollInTank> rolls = rolls(session, load);
    List<Optional<Volume>> taken = steps.taken();
    RunCard card =
        new RunCard(
            0,
            Optional.of(id),
            load.note().isBlank() ? "Load " + id : load.note(),
            load.tank(),
            rolls,
            process.slug(),
            process.name(),
            load.recipe().developer(),
            load.recipe().dilution(),
            Optional.of(load.recipe().temperature()),
            load.time().standing(),
            load.time().source(),
            Optional.of(load.fill()),
            now);
    long run = new Runs(session).add(card, steps.steps(), taken).id();
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

  private static List<RollInTank> rolls(Session session, Load load) {
    List<RollInTank> rolls = new ArrayList<>();
    int count = load.rolls().size();
    for (Load.Place place : load.rolls()) {
      Roll roll =
          new Rolls(session)
              .find(place.number())
              .orElseThrow(
                  () -> new BadValueException("roll", place.number(), "there is no such roll"));
      int position = rolls.size() + 1;
      rolls.add(
          new RollInTank(
              roll.number(),
              roll.filmAndIndex(),
              position,
              placeOf(position, count),
              roll.amount()));
    }
    return rolls;
  }

  private static String placeOf(int position, int count) {
    if (count == 1) {
      return "the only reel";
    }
    if (position == 1) {
      return "bottom reel";
    }
    return position == count ? "top reel" : "reel " + position + " from the bottom";
  }
}
