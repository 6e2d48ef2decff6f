package org.wetside.core.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;

/** A bottle that a mishap left in doubt stays so until somebody answers it. */
class OpenMarksTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 1, 14);
  private static final Instant NOON = Instant.parse("2026-01-14T12:00:00Z");
  private static final BottleLabel FIXER =
      BottleLabel.of("F", "fix", BottleRole.WORKING, BathKind.FIXER, Volume.ofLitres(1))
          .withDays(Optional.of(TODAY), Optional.empty());
  private static final BottleEvent DO_NOT_USE = new BottleEvent.Marked(BottleMark.DO_NOT_USE);
  private static final BottleEvent TEST_FIRST = new BottleEvent.Marked(BottleMark.TEST_FIRST);
  private static final BottleEvent CLIP_PASSED =
      new BottleEvent.Tested(BathTest.CLIP, true, Optional.empty());

  private final List<LedgerLine> ledger = new ArrayList<>();
  private Instant now = NOON;

  OpenMarksTest() {
    by("", "", new BottleEvent.Filled(Volume.ofLitres(1)));
  }

  @Test
  void theWrongBottleIsNotToBeUsedUntilDecided() {
    by("7", "wrong bottle, decide", DO_NOT_USE);
    assertThat(verdict().kind()).isEqualTo(Verdict.Kind.DO_NOT_USE);
    assertThat(verdict().kind().word() + ": " + verdict().first().words())
        .isEqualTo("do not use: wrong bottle, decide");
    by("", "", CLIP_PASSED);
    assertThat(verdict().kind())
        .as("a passed test does not say what is in it")
        .isEqualTo(Verdict.Kind.DO_NOT_USE);
    by("", "only a few drops", new BottleEvent.MarkLifted(BottleMark.DO_NOT_USE));
    assertThat(verdict().kind()).isEqualTo(Verdict.Kind.USE);
  }

  @Test
  void aTestOfBeforeDoesNotAnswerTestFirstAndOneOfAfterDoes() {
    by("", "", CLIP_PASSED);
    assertThat(verdict().kind()).isEqualTo(Verdict.Kind.USE);
    by("7", "no rinse before the fixer", TEST_FIRST);
    assertThat(verdict().kind()).isEqualTo(Verdict.Kind.TEST_FIRST);
    assertThat(verdict().first().words()).isEqualTo("no rinse before the fixer");
    by("", "", new BottleEvent.Tested(BathTest.CLIP, false, Optional.empty()));
    assertThat(bottle().state().marked(BottleMark.TEST_FIRST)).isTrue();
    by("", "", CLIP_PASSED);
    assertThat(verdict().kind()).isEqualTo(Verdict.Kind.USE);
  }

  @Test
  void aRunLiftsOnlyItsOwnMark() {
    by("7", "wrong bottle, decide", DO_NOT_USE);
    by("8", "wrong bottle, decide", DO_NOT_USE);
    by("8", "the mishap was taken back", new BottleEvent.MarkLifted(BottleMark.DO_NOT_USE));
    assertThat(bottle().state().marks()).extracting(MarkSeen::run).containsExactly("7");
    by("", "looked at it", new BottleEvent.MarkLifted(BottleMark.DO_NOT_USE));
    assertThat(bottle().state().marks()).isEmpty();
  }

  @Test
  void aDecisionNeedsSomethingToDecideAndAWord() {
    BottleEvent lifted = new BottleEvent.MarkLifted(BottleMark.DO_NOT_USE);
    assertThatThrownBy(() -> require("fine", lifted))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("\"do not use\" does not stand in its book");
    by("7", "wrong bottle, decide", DO_NOT_USE);
    assertThatThrownBy(() -> require(" ", lifted))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("reason of the decision");
    require("fine", lifted);
  }

  private void require(String note, BottleEvent what) {
    LedgerRules.require(
        bottle(), LedgerLine.byHand(now, note, what), new HereNow(now, ZoneOffset.UTC));
  }

  private void by(String run, String note, BottleEvent what) {
    now = now.plus(Duration.ofMinutes(1));
    ledger.add(new LedgerLine(now, run, note, what));
  }

  private Bottle bottle() {
    return Bottle.of(FIXER, ledger);
  }

  private Verdict verdict() {
    return VerdictRules.of(
        bottle(), new HereNow(now, ZoneOffset.UTC), Optional.empty(), Optional.empty());
  }
}
