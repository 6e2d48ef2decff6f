package org.wetside.core.shelf;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.Volume;

/** One line applied to a state: the parts in motion, in millilitres and rolls. */
final class StateStep {
  private final BottleState before;
  private final BathKind bath;
  private double left;
  private double basis;
  private double film;
  private double load;
  private double replenished;
  private boolean discarded;
  private Instant filledAt;
  private Optional<TestSeen> leader;
  private Optional<TestSeen> proof;
  private Optional<TestSeen> clearing;
  private Optional<TestSeen> baseline;
  private List<MarkSeen> marks;

  StateStep(BottleState before, BathKind bath) {
    this.before = before;
    this.bath = bath;
    left = before.left().millilitres();
    basis = before.basis().millilitres();
    film = before.film().rolls();
    load = before.load().rolls();
    replenished = before.replenished().millilitres();
    discarded = before.discarded();
    filledAt = before.filledAt();
    leader = before.leader();
    proof = before.proof();
    clearing = before.clearing();
    baseline = before.baseline();
    marks = before.marks();
  }

  void take(LedgerLine line) {
    BottleEvent what = line.what();
    if (what instanceof BottleEvent.Filled filled) {
      left += filled.volume().millilitres();
      basis += filled.volume().millilitres();
      filledAt = before.lines() == 0 ? line.at() : filledAt;
    } else if (what instanceof BottleEvent.Used used) {
      left -= used.volume().millilitres();
      count(used.film(), 1);
    } else if (what instanceof BottleEvent.UseUndone undone) {
      left += undone.volume().millilitres();
      count(undone.film(), -1);
    } else if (what instanceof BottleEvent.Taken taken) {
      carryAway(taken.volume().millilitres());
    } else if (what instanceof BottleEvent.PouredBack back) {
      left += back.volume().millilitres();
    } else if (what instanceof BottleEvent.ToppedUp topped) {
      topUp(topped);
    } else if (what instanceof BottleEvent.Corrected corrected) {
      left = corrected.left().millilitres();
    } else if (what instanceof BottleEvent.Discarded) {
      left = 0;
      discarded = true;
    } else if (what instanceof BottleEvent.Tested tested) {
      seen(new TestSeen(line.at(), tested));
    }
    marks = OpenMarks.after(marks, line);
    left = Math.max(0, left);
  }

  private void count(List<FilmUse> rolls, int sign) {
    for (FilmUse use : rolls) {
      film = Math.max(0, film + sign * use.amount().rolls());
      load = Math.max(0, load + sign * use.loadIn(bath).rolls());
    }
  }

  /** Used solution that leaves takes its share of what film has left in it along. */
  private void carryAway(double millilitres) {
    double share = left > 0 ? Math.min(1, millilitres / left) : 0;
    basis *= 1 - share;
    load *= 1 - share;
    left -= millilitres;
  }

  /** A pass from before says nothing of the new mixture; a fail stays until a test is passed. */
  private void topUp(BottleEvent.ToppedUp topped) {
    carryAway(topped.out().millilitres());
    left = Math.max(0, left) + topped.added().millilitres();
    basis += topped.added().millilitres();
    replenished += topped.added().millilitres();
    leader = leader.filter(test -> !test.passed());
    proof = proof.filter(test -> !test.passed());
  }

  private void seen(TestSeen test) {
    if (test.what().test().ofFixer()) {
      proof = Optional.of(test);
    } else {
      leader = Optional.of(test);
    }
    Optional<Clearing> took = test.what().clearing();
    if (took.isPresent()) {
      clearing = Optional.of(test);
      baseline = took.get().baseline() ? Optional.of(test) : baseline;
    }
  }

  BottleState done(LedgerLine line) {
    return new BottleState(
        Volume.ofMillilitres(left),
        Volume.ofMillilitres(basis),
        UnitOfUse.ofRolls(film),
        UnitOfUse.ofRolls(load),
        Volume.ofMillilitres(replenished),
        before.lines() + 1,
        discarded,
        filledAt,
        line.at(),
        leader,
        proof,
        clearing,
        baseline,
        marks);
  }
}
