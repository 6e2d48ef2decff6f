package org.wetside.core.shelf;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.source.Standing;

/** Finds the verdict on a bottle from what is known of it. */
public final class VerdictRules {
  private static final String PRACTICE = "common practice";
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  private final Bottle bottle;
  private final HereNow now;
  private final Vouched vouched;
  private final List<Reason> reasons = new ArrayList<>();

  private VerdictRules(Bottle bottle, HereNow now) {
    this.bottle = bottle;
    this.now = now;
    vouched = new Vouched(bottle, now.moment());
  }

  /**
   * The verdict.
   *
   * @param now the moment, for tests that are believed for two days, and the day it is
   * @param keeping how long such a solution keeps; empty when nothing is on file
   * @param capacity what such a bath does; empty when nothing is on file
   */
  public static Verdict of(
      Bottle bottle, HereNow now, Optional<KeepingTime> keeping, Optional<Capacity> capacity) {
    VerdictRules rules = new VerdictRules(bottle, now);
    if (bottle.discarded()) {
      String on = "discarded on " + rules.day(bottle.lastTouched());
      rules.add(Verdict.Kind.DISCARD, Reason.Ground.LEDGER, on, "its book", Standing.MEASURED);
    } else if (bottle.label().role() == BottleRole.WASTE) {
      rules.add(
          Verdict.Kind.DISCARD,
          Reason.Ground.ROLE,
          "it holds waste: never onto film, and handed in as your local authority says",
          "what stands on it",
          Standing.MEASURED);
    } else {
      rules.lookAtMarks();
      rules.lookAtLabel();
      rules.lookAtTests();
      rules.reasons.add(AgeRule.of(bottle, now.today(), rules.vouched, keeping));
      capacity.ifPresent(rules::lookAtCapacity);
    }
    return Verdict.of(rules.reasons);
  }

  private void lookAtMarks() {
    for (MarkSeen seen : bottle.state().marks()) {
      boolean test = seen.mark() == BottleMark.TEST_FIRST;
      add(
          test ? Verdict.Kind.TEST_FIRST : Verdict.Kind.DO_NOT_USE,
          Reason.Ground.MISHAP,
          seen.why(),
          "its book",
          Standing.COMMON_PRACTICE);
    }
  }

  private void lookAtLabel() {
    BottleNote note = new BottleNote(bottle.label().note());
    if (note.doNotUse()) {
      said(Verdict.Kind.DISCARD, "\"do not use\" stands on it");
    }
    if (note.useBy().filter(last -> last.isBefore(now.today())).isPresent()) {
      said(vouched.unlessVouched(), "out of date since " + DAY.format(note.useBy().get()));
    }
    if (note.testFirst() && !vouched.lately()) {
      said(Verdict.Kind.TEST_FIRST, "\"test first\" stands on it");
    }
  }

  private void said(Verdict.Kind kind, String words) {
    add(kind, Reason.Ground.LABEL, words, "what stands on it", Standing.MEASURED);
  }

  private void lookAtTests() {
    for (TestSeen test : vouched.tests()) {
      if (!test.passed()) {
        tested(Verdict.Kind.DISCARD, test, " failed on ");
      } else if (vouched.believed(test)) {
        tested(Verdict.Kind.USE, test, " passed on ");
      }
    }
    ClearingComparison compared = ClearingComparison.of(bottle.state());
    if (compared instanceof ClearingComparison.Compared ratio && ratio.spent()) {
      add(
          Verdict.Kind.DISCARD,
          Reason.Ground.TEST,
          "a clip takes " + ClearingComparison.SPENT_AT + " times as long to clear as in it fresh",
          "CH-S01, CH-S32",
          Standing.PUBLISHED);
    } else if (compared instanceof ClearingComparison.NotComparable not) {
      add(
          vouched.unlessVouched(),
          Reason.Ground.TEST,
          "not comparable (" + String.join(", ", not.why()) + "): make a baseline",
          PRACTICE,
          Standing.COMMON_PRACTICE);
    }
  }

  private void tested(Verdict.Kind kind, TestSeen test, String how) {
    String words = "its " + test.what().test().word() + how + day(test.at());
    add(kind, Reason.Ground.TEST, words, "its book", Standing.MEASURED);
  }

  private void lookAtCapacity(Capacity capacity) {
    if (bottle.label().oneShot() || bottle.label().role() == BottleRole.CONCENTRATE) {
      return;
    }
    UnitOfUse all = capacity.of(bottle.state().basis());
    UnitOfUse left = capacity.leftIn(bottle);
    String words = Rolls.of(left) + " left of the " + Rolls.of(all) + " that it does";
    Verdict.Kind kind = left.rolls() < 1 ? vouched.unlessVouched() : Verdict.Kind.USE;
    if (left.rolls() <= 1e-9) {
      kind = Verdict.Kind.DISCARD;
      words = "it has done the " + Rolls.of(all) + " that it does";
    }
    add(
        kind,
        Reason.Ground.CAPACITY,
        words + " (" + capacity.bath() + ")",
        capacity.citation().toString(),
        capacity.standing());
  }

  private void add(
      Verdict.Kind kind, Reason.Ground ground, String words, String source, Standing standing) {
    reasons.add(new Reason(kind, ground, words, source, standing));
  }

  private String day(Instant at) {
    return DAY.format(now.day(at));
  }
}
