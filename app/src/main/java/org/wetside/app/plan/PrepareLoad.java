package org.wetside.app.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.app.process.CheckOrder;
import org.wetside.app.process.FindProcess;
import org.wetside.app.shelf.KeepMinimum;
import org.wetside.app.times.AskTime;
import org.wetside.core.bath.SmallestFill;
import org.wetside.core.bath.StockMinimum;
import org.wetside.core.bath.StockRequirement;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.bath.WorkingSolution;
import org.wetside.core.plan.ChosenTime;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollTime;
import org.wetside.core.plan.Sharing;
import org.wetside.core.plan.Tank;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.process.Timeline;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.DilutionRatio;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Standing;
import org.wetside.store.Database;
import org.wetside.store.Rolls;
import org.wetside.store.Tanks;

/** Thinks a load through without keeping it. */
public final class PrepareLoad {
  private final Supplier<Database> database;
  private final RollTimes times;

  /** In this home. */
  public PrepareLoad(Supplier<Database> database) {
    this.database = database;
    times = new RollTimes(new AskTime(database));
  }

  /**
   * What the wish comes to.
   *
   * @throws BadValueException when a roll, the tank or the process does not exist, or a volume does
   *     not fit
   */
  public PreparedLoad of(LoadWish wish) {
    Tank tank = tank(wish.tank());
    FilmProcess process = new FindProcess(database).of(wish.process());
    List<Roll> rolls = wish.rolls().stream().map(this::roll).toList();
    List<PreparedLoad.TimedRoll> timed =
        rolls.stream().map(roll -> times.of(roll, wish.recipe(), tank, process.steps())).toList();
    Sharing sharing = Sharing.of(asking(timed), tank, Sharing.USUAL_TOLERANCE);
    Optional<ChosenTime> time = time(wish, process, timed, sharing);
    UnitOfUse film = rolls.stream().map(Roll::amount).reduce(UnitOfUse.NONE, UnitOfUse::plus);
    Volume covers = tank.covers(Sharing.reels(rolls));
    Optional<StockMinimum> minimum =
        new KeepMinimum(database.get()).find(wish.recipe().developer());
    List<String> inTheWay = new ArrayList<>();
    // A recalled minimum is shown as an open check; it neither raises the fill nor forbids a load.
    Optional<StockMinimum> firm = minimum.filter(known -> known.standing() != Standing.FROM_MEMORY);
    Volume fill = fill(wish, tank, covers, film, firm, inTheWay);
    Optional<DilutionRatio> ratio = wish.recipe().dilution().ratio();
    addReasons(sharing, timed, time, inTheWay);
    return new PreparedLoad(
        wish,
        tank,
        process,
        timed,
        sharing,
        time,
        fill,
        covers,
        film,
        ratio.map(parts -> WorkingSolution.of(parts, fill)),
        ratio.map(parts -> StockRequirement.check(parts.concentrateIn(fill), film, minimum)),
        time.map(chosen -> length(process, chosen.time())),
        inTheWay,
        new CheckOrder(database).of(process, wish.bottles(), wish.recipe().developer()));
  }

  private Tank tank(String name) {
    return database
        .get()
        .read(session -> new Tanks(session).find(name))
        .orElseThrow(
            () ->
                new BadValueException(
                    "tank", name, "there is no such tank; add it under Equipment"));
  }

  private Roll roll(String number) {
    return database
        .get()
        .read(session -> new Rolls(session).find(number))
        .orElseThrow(
            () -> new BadValueException("rolls", number, "there is no roll of that number"));
  }

  private static List<RollTime> asking(List<PreparedLoad.TimedRoll> timed) {
    return timed.stream()
        .map(
            one ->
                new RollTime(
                    one.roll(),
                    one.time().map(ChosenTime::time),
                    one.time().map(ChosenTime::standing),
                    Optional.empty()))
        .toList();
  }

  /** The person's own time; else the one the process fixes; else the one the rolls share. */
  private static Optional<ChosenTime> time(
      LoadWish wish, FilmProcess process, List<PreparedLoad.TimedRoll> timed, Sharing sharing) {
    if (wish.time().isPresent()) {
      return wish.time();
    }
    Optional<Step> fixed =
        process.steps().stream()
            .filter(step -> step.kind().developing() || step.kind() == StepKind.MONOBATH)
            .findFirst()
            .filter(step -> step.duration().isPresent());
    if (fixed.isPresent()) {
      Step step = fixed.get();
      return Optional.of(
          new ChosenTime(
              step.duration().orElseThrow(), step.standing(), step.source(), Optional.empty()));
    }
    boolean all = timed.stream().allMatch(roll -> roll.time().isPresent());
    if (!all || !(sharing instanceof Sharing.Together together) || together.time().isEmpty()) {
      return Optional.empty();
    }
    ChosenTime first = timed.get(0).time().orElseThrow();
    Duration common = together.time().get();
    boolean same = timed.stream().allMatch(roll -> roll.time().get().time().equals(common));
    return Optional.of(
        timed.size() == 1 || same
            ? first
            : new ChosenTime(common, weakest(timed), sources(timed), Optional.empty()));
  }

  private static Standing weakest(List<PreparedLoad.TimedRoll> timed) {
    return timed.stream()
        .map(roll -> roll.time().orElseThrow().standing())
        .reduce(Standing.COMPUTED, Standing::weaker);
  }

  private static String sources(List<PreparedLoad.TimedRoll> timed) {
    return "between the times of "
        + String.join(
            " and ",
            timed.stream()
                .map(one -> one.roll().number() + " (" + one.time().orElseThrow().source() + ")")
                .toList());
  }

  private static Volume fill(
      LoadWish wish,
      Tank tank,
      Volume covers,
      UnitOfUse film,
      Optional<StockMinimum> minimum,
      List<String> inTheWay) {
    if (wish.fill().isPresent()) {
      Volume wanted = wish.fill().get();
      if (wanted.compareTo(tank.holds()) > 0) {
        throw new BadValueException(
            "fill", wanted.toString(), tank.name() + " holds " + tank.holds());
      }
      if (wanted.compareTo(covers) < 0) {
        throw new BadValueException(
            "fill", wanted.toString(), "the film is covered by " + covers + " and no less");
      }
      return wanted;
    }
    Optional<DilutionRatio> ratio = wish.recipe().dilution().ratio();
    if (ratio.isEmpty()) {
      return covers;
    }
    SmallestFill smallest = SmallestFill.of(covers, tank.holds(), ratio.get(), film, minimum);
    if (smallest instanceof SmallestFill.Fits fits) {
      return fits.fill();
    }
    SmallestFill.DoesNotFit not = (SmallestFill.DoesNotFit) smallest;
    inTheWay.add(
        "The maker's minimum of stock would need "
            + Units.METRIC.words(not.needed())
            + "; "
            + tank.name()
            + " holds "
            + Units.METRIC.words(not.holds())
            + ". Take fewer rolls or less dilution.");
    return tank.holds();
  }

  private static void addReasons(
      Sharing sharing,
      List<PreparedLoad.TimedRoll> timed,
      Optional<ChosenTime> time,
      List<String> inTheWay) {
    if (sharing instanceof Sharing.Apart apart) {
      apart.reasons().stream().map(PlanWords::of).forEach(inTheWay::add);
    }
    if (time.isEmpty()) {
      timed.stream()
          .filter(roll -> roll.time().isEmpty())
          .map(roll -> roll.roll().number() + ": " + roll.why())
          .forEach(inTheWay::add);
      if (inTheWay.isEmpty()) {
        inTheWay.add("There is no development time yet: type one line from the leaflet.");
      }
    }
  }

  private static Duration length(FilmProcess process, Duration development) {
    return Timeline.of(process.withDevelopment(development).steps()).length();
  }
}
