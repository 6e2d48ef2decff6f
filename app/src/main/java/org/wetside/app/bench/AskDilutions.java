package org.wetside.app.bench;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.wetside.app.plan.RollTimes;
import org.wetside.app.times.AskTime;
import org.wetside.core.plan.OtherDilution;
import org.wetside.core.plan.Recipe;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.Tank;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Judge;
import org.wetside.core.run.MishapAdvice;
import org.wetside.core.run.Outcome;
import org.wetside.core.run.RollInTank;
import org.wetside.core.run.RunCard;
import org.wetside.core.run.RunEvent;
import org.wetside.core.run.RunState;
import org.wetside.store.Database;
import org.wetside.store.Rolls;
import org.wetside.store.Tanks;

/**
 * The other dilutions that a wrongly mixed developer may be, each with its new time: only those on
 * file for every film in the tank, beside the planned one, and only where the time is honest.
 */
public final class AskDilutions {
  private final Supplier<Database> database;
  private final Clock clock;
  private final Bench bench;
  private final AskTime askTime;

  /**
   * @param database where rolls and tanks are kept
   * @param clock by which too late is judged
   * @param bench the conductor that leads the run
   * @param askTime gives the times
   */
  public AskDilutions(Supplier<Database> database, Clock clock, Bench bench, AskTime askTime) {
    this.database = database;
    this.clock = clock;
    this.bench = bench;
    this.askTime = askTime;
  }

  /**
   * What may be offered.
   *
   * @param step index of the developer; empty when it is over, or the run has none
   * @param planned the dilution of the load
   * @param others what was found, shortest time first
   */
  public record Found(OptionalInt step, Dilution planned, List<Offer> others) {
    public Found {
      others = List.copyOf(others);
    }
  }

  /**
   * A dilution with its time.
   *
   * @param other the dilution and its time
   * @param refused why the run cannot take it any more; empty when it can
   */
  public record Offer(OtherDilution other, Optional<String> refused) {}

  /**
   * The dilutions for a run, as it stands.
   *
   * @throws NoSuchRunException when there is none
   */
  public Found of(long run) {
    BenchSnapshot at = bench.look(run);
    RunCard card = at.card();
    OptionalInt step = developer(at.state());
    Optional<Tank> tank = database.get().read(session -> new Tanks(session).find(card.tank()));
    List<Roll> rolls = rolls(card);
    boolean known = !rolls.isEmpty() && rolls.size() == card.rolls().size();
    if (step.isEmpty() || tank.isEmpty() || card.temperature().isEmpty() || !known) {
      return new Found(step, card.dilution(), List.of());
    }
    List<Offer> offers = new ArrayList<>();
    for (Dilution dilution : onFile(rolls, card)) {
      Recipe recipe = new Recipe(card.developer(), dilution, card.temperature().get());
      List<OtherDilution.FilmTime> films =
          rolls.stream().map(roll -> time(roll, recipe, tank.get(), at.state())).toList();
      OtherDilution.of(dilution, films)
          .map(other -> offer(at.state(), step.getAsInt(), other))
          .ifPresent(offers::add);
    }
    offers.sort((one, two) -> time(one).compareTo(time(two)));
    return new Found(step, card.dilution(), offers);
  }

  private static OptionalInt developer(RunState state) {
    return IntStream.range(Math.max(0, state.current()), state.plan().steps().size())
        .filter(i -> state.plan().step(i).kind() == StepKind.DEVELOPER)
        .filter(i -> state.steps().get(i).drain().isEmpty())
        .findFirst();
  }

  private List<Roll> rolls(RunCard card) {
    return database
        .get()
        .read(
            session ->
                card.rolls().stream()
                    .map(RollInTank::number)
                    .flatMap(number -> new Rolls(session).find(number).stream())
                    .toList());
  }

  /** The others on file for every film; none when the planned one is not on file for each. */
  private List<Dilution> onFile(List<Roll> rolls, RunCard card) {
    List<Dilution> common = new ArrayList<>();
    for (int i = 0; i < rolls.size(); i++) {
      List<Dilution> known = onFile(rolls.get(i), card.developer());
      if (!has(known, card.dilution())) {
        return List.of();
      }
      if (i == 0) {
        common.addAll(known);
      } else {
        common.removeIf(one -> !has(known, one));
      }
    }
    common.removeIf(one -> one.matches(card.dilution()));
    return common;
  }

  private List<Dilution> onFile(Roll roll, String developer) {
    try {
      return askTime.dilutions(roll.described().film(), developer);
    } catch (BadValueException unknown) {
      return List.of();
    }
  }

  private static boolean has(List<Dilution> known, Dilution one) {
    return known.stream().anyMatch(one::matches);
  }

  private OtherDilution.FilmTime time(Roll roll, Recipe recipe, Tank tank, RunState state) {
    return new OtherDilution.FilmTime(
        roll.filmAndIndex(),
        new RollTimes(askTime).of(roll, recipe, tank, state.plan().steps()).time());
  }

  private Offer offer(RunState state, int step, OtherDilution other) {
    Instant now = clock.instant();
    Happening told =
        new Happening.Mishap(MishapAdvice.WRONG_DILUTION, "", Optional.of(other.time().time()));
    RunEvent asked =
        new RunEvent("asked", state.sequence() + 1, step, told, now, now, RunEvent.CONDUCTOR, "");
    return new Offer(
        other,
        Judge.of(state, asked) instanceof Outcome.Refused no
            ? Optional.of(no.reason())
            : Optional.empty());
  }

  private static Duration time(Offer offer) {
    return offer.other().time().time();
  }
}
