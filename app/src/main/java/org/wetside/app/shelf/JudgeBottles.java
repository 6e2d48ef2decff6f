package org.wetside.app.shelf;

import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollState;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.Capacity;
import org.wetside.core.shelf.Clearing;
import org.wetside.core.shelf.ClearingComparison;
import org.wetside.core.shelf.FilmUse;
import org.wetside.core.shelf.FixingTime;
import org.wetside.core.shelf.Verdict;
import org.wetside.core.shelf.VerdictRules;
import org.wetside.reference.Capacities;
import org.wetside.reference.KeepingTimes;
import org.wetside.store.Bottles;
import org.wetside.store.Database;
import org.wetside.store.Rolls;
import org.wetside.store.Session;

/** Says of every bottle whether to use it, why, and what it can still do. */
public final class JudgeBottles {
  private final Database database;
  private final Clock clock;

  /** Over one home's database. */
  public JudgeBottles(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /** Every bottle on the shelf, by letter. */
  public List<JudgedBottle> all() {
    return database.read(
        session -> {
          List<Roll> waiting = waiting(session);
          return new Bottles(session)
              .onShelf().stream().map(bottle -> judged(bottle, waiting, FixingTime.USUAL)).toList();
        });
  }

  /** The last bottle of that letter, on the shelf or off it. */
  public Optional<JudgedBottle> find(String letter) {
    return find(letter, FixingTime.USUAL);
  }

  /**
   * The same, with the fixing time for a bath of that temperature.
   *
   * @throws org.wetside.core.quantity.BadValueException when no fixer is so cold or warm
   */
  public Optional<JudgedBottle> find(String letter, Temperature fixedAt) {
    return database.read(
        session ->
            new Bottles(session)
                .findLast(letter)
                .map(bottle -> judged(bottle, waiting(session), fixedAt)));
  }

  /** The verdict alone, as it stands now. */
  public static Verdict verdict(Bottle bottle, Clock clock) {
    return VerdictRules.of(
        bottle, Today.now(clock), KeepingTimes.of(bottle), Capacities.of(bottle.label()));
  }

  private JudgedBottle judged(Bottle bottle, List<Roll> waiting, Temperature fixedAt) {
    boolean counted =
        !bottle.label().oneShot()
            && bottle.label().role() != BottleRole.CONCENTRATE
            && !bottle.discarded();
    Optional<Capacity> capacity = counted ? Capacities.of(bottle.label()) : Optional.empty();
    Optional<UnitOfUse> left = capacity.map(one -> one.leftIn(bottle));
    return new JudgedBottle(
        bottle,
        verdict(bottle, clock),
        capacity,
        left,
        left.map(units -> rolls(bottle, units, waiting)).orElse(List.of()),
        fixing(bottle, waiting, fixedAt),
        ClearingComparison.of(bottle.state()));
  }

  private static List<Roll> waiting(Session session) {
    Rolls rolls = new Rolls(session);
    List<Roll> both = new ArrayList<>(rolls.in(RollState.WAITING));
    both.addAll(rolls.in(RollState.LOADED));
    return both;
  }

  private static List<JudgedBottle.FilmLeft> rolls(
      Bottle bottle, UnitOfUse left, List<Roll> waiting) {
    Map<String, List<Roll>> films = new LinkedHashMap<>();
    for (Roll roll : waiting) {
      if (roll.amount().rolls() > 0) {
        String film =
            roll.described().film()
                + " "
                + roll.described().size().word()
                + roll.described().frames().map(count -> "-" + count).orElse("");
        films.computeIfAbsent(film, key -> new ArrayList<>()).add(roll);
      }
    }
    List<JudgedBottle.FilmLeft> all = new ArrayList<>();
    films.forEach(
        (film, rolls) -> {
          FilmUse use = FilmGrain.use(rolls.get(0));
          int count = Capacity.wholeRolls(left, use.amount(), bottle.label().bath(), use.tabular());
          all.add(new JudgedBottle.FilmLeft(film, count, rolls.size()));
        });
    return all;
  }

  /** Three times the clearing time when the fixer, a film that waits, or the clip asks for it. */
  private static Optional<FixingTime> fixing(
      Bottle bottle, List<Roll> waiting, Temperature fixedAt) {
    if (!FilmUse.fixes(bottle.label().bath()) || bottle.discarded()) {
      return Optional.empty();
    }
    Optional<Clearing> last = bottle.state().clearing().flatMap(test -> test.what().clearing());
    boolean slow =
        Capacities.fixesSlowly(bottle.label().contents())
            || waiting.stream().anyMatch(FilmGrain::tabular)
            || last.filter(clip -> FilmGrain.tabular(clip.film())).isPresent();
    return last.map(clip -> FixingTime.after(clip, Capacities.fixingTimes(slow), fixedAt));
  }
}
