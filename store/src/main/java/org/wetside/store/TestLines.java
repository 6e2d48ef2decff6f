package org.wetside.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.shelf.BottleState;
import org.wetside.core.shelf.MarkSeen;
import org.wetside.core.shelf.TestSeen;

/**
 * Which lines of a ledger are the tests that its state names.
 *
 * @param leader the last leader test that still says something
 * @param proof the last test of a fixer that still says something
 * @param clearing the last clearing time
 * @param baseline the clearing time of the fresh solution
 */
record TestLines(
    Optional<Long> leader, Optional<Long> proof, Optional<Long> clearing, Optional<Long> baseline) {
  static final TestLines NONE =
      new TestLines(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  static TestLines read(Row row) {
    return new TestLines(
        row.maybeWhole("leader_line"),
        row.maybeWhole("proof_line"),
        row.maybeWhole("clearing_line"),
        row.maybeWhole("baseline_line"));
  }

  /** After a line of that id has moved the state on. */
  TestLines after(BottleState before, BottleState after, long line) {
    return new TestLines(
        moved(leader, before.leader(), after.leader(), line),
        moved(proof, before.proof(), after.proof(), line),
        moved(clearing, before.clearing(), after.clearing(), line),
        moved(baseline, before.baseline(), after.baseline(), line));
  }

  private static Optional<Long> moved(
      Optional<Long> known, Optional<TestSeen> before, Optional<TestSeen> after, long line) {
    if (after.isEmpty()) {
      return Optional.empty();
    }
    return after.equals(before) ? known : Optional.of(line);
  }

  /** The state of a bottle's row, with the marks that are open. */
  BottleState state(Row row, LedgerRows ledger, List<MarkSeen> marks) {
    return new BottleState(
        row.volume("left_volume_ml"),
        row.volume("basis_volume_ml"),
        UnitOfUse.ofRolls(row.number("film_rolls")),
        UnitOfUse.ofRolls(row.number("load_rolls")),
        row.volume("replenished_volume_ml"),
        row.whole("lines"),
        row.yes("discarded"),
        row.maybeMoment("filled_at").orElse(Instant.EPOCH),
        row.maybeMoment("touched_at").orElse(Instant.EPOCH),
        leader.map(ledger::test),
        proof.map(ledger::test),
        clearing.map(ledger::test),
        baseline.map(ledger::test),
        marks);
  }
}
