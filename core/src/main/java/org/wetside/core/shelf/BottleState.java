package org.wetside.core.shelf;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.Volume;

/**
 * What a ledger comes to. It is the fold over all lines, and can as well be carried along line by
 * line: {@link #after} never refuses and never goes below nothing; what may be entered at all is
 * decided before, by {@link LedgerRules}.
 *
 * @param left how much is in the bottle, never below 0
 * @param basis the volume its capacity is counted for: what was filled in and added, less what was
 *     taken out for good other than by film
 * @param film how much film went through it
 * @param load the same in the bath's own count (tabular grain counts more in a fixer), less what
 *     left with solution that was taken out
 * @param replenished fresh solution added so far
 * @param lines how many lines there are
 * @param discarded whether it is off the shelf
 * @param filledAt moment of the first line
 * @param lastTouched moment of the last line
 * @param leader the last leader test that still says something
 * @param proof the last test of a fixer that still says something
 * @param clearing the last clearing time that was taken
 * @param baseline the clearing time when the solution was fresh
 * @param marks what mishaps wrote on it and nobody has answered yet, the oldest first
 */
public record BottleState(
    Volume left,
    Volume basis,
    UnitOfUse film,
    UnitOfUse load,
    Volume replenished,
    long lines,
    boolean discarded,
    Instant filledAt,
    Instant lastTouched,
    Optional<TestSeen> leader,
    Optional<TestSeen> proof,
    Optional<TestSeen> clearing,
    Optional<TestSeen> baseline,
    List<MarkSeen> marks) {
  /** Before the first line. */
  public static final BottleState NOTHING =
      new BottleState(
          Volume.ZERO,
          Volume.ZERO,
          UnitOfUse.NONE,
          UnitOfUse.NONE,
          Volume.ZERO,
          0,
          false,
          Instant.EPOCH,
          Instant.EPOCH,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          List.of());

  public BottleState {
    marks = List.copyOf(marks);
  }

  /** The fold over a whole ledger, oldest line first. */
  public static BottleState of(BathKind bath, List<LedgerLine> ledger) {
    BottleState state = NOTHING;
    for (LedgerLine line : ledger) {
      state = state.after(line, bath);
    }
    return state;
  }

  /** What it is after one more line. */
  public BottleState after(LedgerLine line, BathKind bath) {
    StateStep step = new StateStep(this, bath);
    step.take(line);
    return step.done(line);
  }

  /** Whether a mark of that kind is still to be answered. */
  public boolean marked(BottleMark mark) {
    return marks.stream().anyMatch(seen -> seen.mark() == mark);
  }

  /** Whether its last test said that it is spent. */
  public boolean failed() {
    return leader.filter(test -> !test.passed()).isPresent() || fixFailed();
  }

  /** Whether its last test as a fixer said that it is spent. */
  public boolean fixFailed() {
    return proof.filter(test -> !test.passed()).isPresent();
  }
}
