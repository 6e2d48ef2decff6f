package org.wetside.core.shelf;

import java.time.Duration;
import java.util.List;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.Volume;

/**
 * A maker's table for reusing a developer: steps, not a smooth law, and with an end.
 *
 * @param steps its rows by roll number; at least one
 */
public record ReuseTable(List<ReuseStep> steps) {
  /** What the table says of a roll. */
  public sealed interface Answer {
    /** Which roll it is, counted for the volume of the table. */
    int roll();
  }

  /**
   * A time.
   *
   * @param roll which roll it is
   * @param time how long to develop it
   * @param step the row
   */
  public record Known(int roll, Duration time, ReuseStep step) implements Answer {}

  /**
   * The table has ended: the bath is spent.
   *
   * @param roll which roll it would be
   * @param last the last roll with a time
   */
  public record Ended(int roll, int last) implements Answer {}

  public ReuseTable {
    steps = List.copyOf(steps);
  }

  /** The last roll that has a time. */
  public int last() {
    return steps.stream()
        .filter(step -> step.time().isPresent())
        .mapToInt(ReuseStep::to)
        .max()
        .orElse(0);
  }

  /** What it says of the roll of that number, 1 the first. */
  public Answer at(int roll) {
    return steps.stream()
        .filter(step -> step.from() <= roll && roll <= step.to())
        .filter(step -> step.time().isPresent())
        .findFirst()
        .<Answer>map(step -> new Known(roll, step.time().get(), step))
        .orElseGet(() -> new Ended(roll, last()));
  }

  /**
   * What it says of the next roll in a bath of another volume: so much film in half the volume
   * counts twice.
   *
   * @param done film that went through it
   * @param bath volume of the bath, above 0
   */
  public Answer next(UnitOfUse done, Volume bath) {
    double counted = done.rolls() * steps.get(0).volume().ratioTo(bath);
    return at((int) Math.ceil(counted - 1e-9) + 1);
  }
}
