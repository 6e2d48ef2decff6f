package org.wetside.app.plan;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.wetside.app.CannotDoException;
import org.wetside.app.process.FindProcess;
import org.wetside.core.plan.ChosenTime;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.LoadState;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollState;
import org.wetside.core.quantity.BadValueException;
import org.wetside.store.Database;
import org.wetside.store.Loads;
import org.wetside.store.Rolls;
import org.wetside.store.Runs;
import org.wetside.store.Session;

/**
 * Makes loads, changes them, takes them apart. A load that was brought to the Bench stays as it is.
 */
public final class MakeLoad {
  private final Supplier<Database> database;
  private final Clock clock;
  private final PrepareLoad prepare;

  /** In this home. */
  public MakeLoad(Supplier<Database> database, Clock clock) {
    this.database = database;
    this.clock = clock;
    prepare = new PrepareLoad(database);
  }

  /** What a wish comes to, without keeping it. */
  public PreparedLoad prepared(LoadWish wish) {
    return prepare.of(wish);
  }

  /**
   * Makes a load; its rolls leave the drawer for the tank.
   *
   * @throws BadValueException when something stands in the way, with all of it
   */
  public Load make(LoadWish wish) {
    Load load = load(0, requireClear(prepare.of(wish)));
    return database
        .get()
        .inTransaction(
            session -> {
              requireWaiting(session, wish.rolls(), List.of());
              Load kept = new Loads(session).add(load);
              new Rolls(session).move(load.numbers(), RollState.LOADED);
              return kept;
            });
  }

  /**
   * Makes a planned load anew.
   *
   * @throws CannotDoException when it is at the Bench already, or over
   */
  public Load change(long id, LoadWish wish) {
    Load load = load(id, requireClear(prepare.of(wish)));
    return database
        .get()
        .inTransaction(
            session -> {
              Load before = requirePlanned(session, id);
              requireWaiting(session, wish.rolls(), before.numbers());
              new Rolls(session).move(before.numbers(), RollState.WAITING);
              new Rolls(session).move(load.numbers(), RollState.LOADED);
              new Loads(session).change(load);
              return load;
            });
  }

  /**
   * The same load led by another process, its development time as it was.
   *
   * @throws BadValueException when there is no such process
   * @throws CannotDoException when it is at the Bench already, or over
   */
  public Load ledBy(long id, String process) {
    return database
        .get()
        .inTransaction(
            session -> {
              Load load =
                  requirePlanned(session, id).withProcess(FindProcess.in(session, process).slug());
              new Loads(session).change(load);
              return load;
            });
  }

  /**
   * Takes a planned load apart; its rolls wait again.
   *
   * @throws CannotDoException when it is at the Bench already, or over
   */
  public void dissolve(long id) {
    database
        .get()
        .change(
            session -> {
              Load load = requirePlanned(session, id);
              new Rolls(session).move(load.numbers(), RollState.WAITING);
              new Loads(session).move(id, LoadState.DISSOLVED);
            });
  }

  private Load load(long id, PreparedLoad prepared) {
    LoadWish wish = prepared.wish();
    List<Load.Place> places = new ArrayList<>();
    for (PreparedLoad.TimedRoll roll : prepared.rolls()) {
      places.add(
          new Load.Place(
              roll.roll().number(),
              roll.time().map(ChosenTime::time),
              roll.time().map(ChosenTime::standing)));
    }
    return new Load(
        id,
        LoadState.PLANNED,
        clock.instant().truncatedTo(ChronoUnit.MILLIS),
        places,
        prepared.tank().name(),
        prepared.process().slug(),
        wish.recipe(),
        prepared.time().orElseThrow(),
        prepared.fill(),
        wish.bottles(),
        wish.startsAt(),
        wish.note());
  }

  private static PreparedLoad requireClear(PreparedLoad prepared) {
    if (!prepared.canBeKept()) {
      throw new BadValueException(
          "load", String.join(", ", prepared.wish().rolls()), PlanWords.all(prepared.inTheWay()));
    }
    return prepared;
  }

  private static Load requirePlanned(Session session, long id) {
    Load load =
        new Loads(session)
            .find(id)
            .orElseThrow(
                () -> new BadValueException("load", Long.toString(id), "there is no such load"));
    boolean atTheBench = new Runs(session).ofLoad(id).isPresent();
    if (load.state() != LoadState.PLANNED || atTheBench) {
      throw new CannotDoException(
          "load "
              + id
              + " is "
              + (atTheBench && load.state() == LoadState.PLANNED
                  ? "at the Bench"
                  : load.state().word())
              + "; it stays as it is");
    }
    return load;
  }

  private static void requireWaiting(Session session, List<String> wanted, List<String> own) {
    for (String number : wanted) {
      Roll roll = new Rolls(session).find(number).orElseThrow();
      if (roll.state() != RollState.WAITING && !own.contains(roll.number())) {
        throw new BadValueException("rolls", number, "it is " + roll.state().word() + " already");
      }
    }
  }
}
