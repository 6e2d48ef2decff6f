package org.wetside.core.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;

/** What cannot be true is refused with the thing, the value and the limit. */
class LedgerRulesTest {
  private static final Instant NOW = Instant.parse("2026-01-10T18:00:00Z");
  private static final LocalDate TODAY = LocalDate.of(2026, 1, 10);
  private static final HereNow HERE = new HereNow(NOW, ZoneOffset.UTC);
  private static final BottleLabel LABEL =
      BottleLabel.of("F", "fixer", BottleRole.WORKING, BathKind.FIXER, ml(1000));
  private static final Bottle HALF =
      new Bottle(LABEL, BottleState.NOTHING).after(line(new BottleEvent.Filled(ml(500))));

  private static Volume ml(double millilitres) {
    return Volume.ofMillilitres(millilitres);
  }

  private static LedgerLine line(BottleEvent what) {
    return LedgerLine.byHand(NOW, "", what);
  }

  private static void refused(Bottle bottle, BottleEvent what, String... words) {
    assertThatThrownBy(() -> LedgerRules.require(bottle, line(what), HERE))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll(words);
  }

  @Test
  void impossibleVolumesAreRefused() {
    refused(HALF, new BottleEvent.Taken(ml(600)), "600 mL", "only 500 mL");
    refused(HALF, new BottleEvent.Taken(ml(0)), "above 0 mL");
    refused(HALF, new BottleEvent.ToppedUp(ml(0), ml(501)), "501 mL", "holds 1000 mL");
    refused(HALF, new BottleEvent.ToppedUp(ml(501), ml(1)), "501 mL");
    refused(HALF, new BottleEvent.PouredBack(ml(501)), "501 mL", "1000 mL");
    refused(HALF, new BottleEvent.Corrected(ml(1001)), "1001 mL", "1000 mL");
    refused(HALF, new BottleEvent.Corrected(ml(400)), "reason");
    assertThatCode(
            () -> LedgerRules.require(HALF, line(new BottleEvent.ToppedUp(ml(100), ml(600))), HERE))
        .doesNotThrowAnyException();
  }

  @Test
  void whatIsStillToComeIsRefused() {
    refused(HALF, new BottleEvent.Opened(TODAY.plusDays(1)), "2026-01-11", "still to come");
    LedgerLine later = LedgerLine.byHand(NOW.plusSeconds(1), "", new BottleEvent.Taken(ml(10)));
    assertThatThrownBy(() -> LedgerRules.require(HALF, later, HERE))
        .hasMessageContaining("still to come");
    BottleLabel tomorrow = LABEL.withDays(Optional.of(TODAY.plusDays(1)), Optional.empty());
    assertThatThrownBy(() -> LedgerRules.requireNew(tomorrow, ml(10), TODAY))
        .hasMessageContainingAll("day of mixing", "2026-01-11", "still to come");
    assertThatThrownBy(() -> LedgerRules.requireNew(LABEL, ml(1001), TODAY))
        .hasMessageContainingAll("1001 mL", "holds 1000 mL");
  }

  @Test
  void aDiscardedBottleIsNotUsed() {
    Bottle gone = HALF.after(line(new BottleEvent.Discarded()));
    refused(gone, new BottleEvent.Taken(ml(1)), "\"F\"", "discarded on 2026-01-10");
    refused(
        gone,
        new BottleEvent.Used(ml(0), List.of(FilmUse.unnamed(UnitOfUse.ONE_ROLL))),
        "discarded");
    refused(gone, new BottleEvent.Tested(BathTest.CLIP, true, Optional.empty()), "discarded");
    refused(gone, new BottleEvent.Discarded(), "discarded");
    assertThatCode(
            () -> LedgerRules.require(gone, line(new BottleEvent.Refixed(List.of("A-1"))), HERE))
        .doesNotThrowAnyException();
    assertThat(gone.left()).isEqualTo(Volume.ZERO);
  }

  /** At 23:30 in Auckland it is the 11th, whatever day it is in Greenwich. */
  @Test
  void theDayIsThatOfThePersonsWall() {
    Instant evening = Instant.parse("2026-01-11T10:30:00Z");
    Bottle gone = HALF.after(LedgerLine.byHand(evening, "", new BottleEvent.Discarded()));
    HereNow auckland = new HereNow(evening.plusSeconds(7200), ZoneId.of("Pacific/Auckland"));
    LedgerLine line = LedgerLine.byHand(evening, "", new BottleEvent.Taken(ml(1)));
    assertThat(auckland.today()).isEqualTo("2026-01-12");
    assertThatThrownBy(() -> LedgerRules.require(gone, line, auckland))
        .hasMessageContaining("discarded on 2026-01-11");
    HereNow honolulu = new HereNow(evening, ZoneId.of("Pacific/Honolulu"));
    assertThatThrownBy(() -> LedgerRules.require(gone, line, honolulu))
        .hasMessageContaining("discarded on 2026-01-11");
    Instant early = Instant.parse("2026-01-11T09:30:00Z");
    Bottle before = HALF.after(LedgerLine.byHand(early, "", new BottleEvent.Discarded()));
    assertThatThrownBy(() -> LedgerRules.require(before, line, honolulu))
        .hasMessageContaining("discarded on 2026-01-10");
  }

  /** After the third rotation both are discarded (CH-S14 p.107). */
  @Test
  void twoFixersTurnThreeTimesAndThenBothGo() {
    FixerPair pair = new FixerPair("A", "B", 0);
    assertThat(pair.next()).isEqualTo(new FixerPair.MoveDown("A", "B", 1));
    pair = pair.movedDown("C").movedDown("D");
    assertThat(pair.next()).isEqualTo(new FixerPair.MoveDown("C", "D", 3));
    pair = pair.movedDown("E");
    assertThat(pair.next()).isEqualTo(new FixerPair.DiscardBoth("D", "E"));
  }
}
