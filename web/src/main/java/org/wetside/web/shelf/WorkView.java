package org.wetside.web.shelf;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.shelf.JudgedBottle;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.shelf.Capacity;
import org.wetside.core.shelf.Clearing;
import org.wetside.core.shelf.ClearingComparison;
import org.wetside.core.shelf.TestSeen;

/**
 * What a bottle has done and can still do.
 *
 * @param filmRolls film that went through it, in rolls of 80 in²
 * @param loadRolls the same as its bath counts it: tabular grain counts 1.5 in a fixer
 * @param rollsPerLitre what such a bath does, or null when nothing is on file or nothing goes back
 * @param capacitySource where that stands, or null
 * @param capacityStanding how it is known, or null
 * @param leftRolls what it can still do of ordinary film, or null
 * @param films the same in whole rolls of each film in the drawer
 * @param freshSeconds clearing time of the fresh solution, or null
 * @param clearingSeconds the last clearing time, or null
 * @param clearingRatio the last over the fresh one, or null when they cannot be compared
 * @param notComparable why they cannot; empty when they can or none was taken
 * @param fixSeconds how long to fix next, or null
 * @param fixAtC the temperature that is for: 20 when nothing else was asked; null with it
 * @param fixTimes how many times the clearing time that is, or null
 */
public record WorkView(
    double filmRolls,
    double loadRolls,
    @Nullable Double rollsPerLitre,
    @Nullable String capacitySource,
    @Nullable String capacityStanding,
    @Nullable Double leftRolls,
    List<FilmView> films,
    @Nullable Double freshSeconds,
    @Nullable Double clearingSeconds,
    @Nullable Double clearingRatio,
    List<String> notComparable,
    @Nullable Long fixSeconds,
    @Nullable Double fixAtC,
    @Nullable Double fixTimes) {
  /**
   * What it can still do of one film.
   *
   * @param film film and size, as in the drawer
   * @param rolls whole rolls
   * @param waiting how many of it wait
   */
  public record FilmView(String film, int rolls, int waiting) {}

  static WorkView of(JudgedBottle judged) {
    ClearingComparison compared = judged.clearing();
    return new WorkView(
        judged.bottle().film().rolls(),
        judged.bottle().state().load().rolls(),
        judged.capacity().map(Capacity::rollsPerLitre).orElse(null),
        judged.capacity().map(one -> one.citation().toString()).orElse(null),
        judged.capacity().map(one -> one.standing().word()).orElse(null),
        judged.left().map(UnitOfUse::rolls).orElse(null),
        judged.rolls().stream()
            .map(one -> new FilmView(one.film(), one.rolls(), one.waiting()))
            .toList(),
        seconds(judged.bottle().state().baseline()),
        seconds(judged.bottle().state().clearing()),
        compared instanceof ClearingComparison.Compared one ? (Double) one.ratio() : null,
        compared instanceof ClearingComparison.NotComparable not ? not.why() : List.of(),
        judged.fixing().map(fix -> fix.time().toSeconds()).orElse(null),
        judged.fixing().map(fix -> fix.at().celsius()).orElse(null),
        judged.fixing().map(fix -> fix.times()).orElse(null));
  }

  private static @Nullable Double seconds(Optional<TestSeen> test) {
    return test.flatMap(seen -> seen.what().clearing()).map(Clearing::seconds).orElse(null);
  }
}
