package org.wetside.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.AfterPouring;
import org.wetside.core.shelf.BathTest;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.BottleState;
import org.wetside.core.shelf.Capacity;
import org.wetside.core.shelf.Clearing;
import org.wetside.core.shelf.ClearingComparison;
import org.wetside.core.shelf.FilmUse;
import org.wetside.core.shelf.FixingTime;
import org.wetside.core.shelf.HereNow;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.core.shelf.Reason;
import org.wetside.core.shelf.Replenishing;
import org.wetside.core.shelf.ReuseTable;
import org.wetside.core.shelf.Verdict;
import org.wetside.core.shelf.VerdictRules;
import org.wetside.core.source.Standing;

/**
 * What the files say of bottles, against worked values. Bottles are invented, figures are cited.
 */
class ShelfFiguresTest {
  private static final Instant NOW = Instant.parse("2026-03-10T12:00:00Z");

  private static Volume ml(double millilitres) {
    return Volume.ofMillilitres(millilitres);
  }

  private static BottleLabel fixer(String contents, double full) {
    return BottleLabel.of("F", contents, BottleRole.WORKING, BathKind.FIXER, ml(full))
        .withDays(Optional.of(LocalDate.of(2026, 3, 1)), Optional.empty());
  }

  private static Bottle filled(BottleLabel label, BottleEvent... events) {
    Bottle bottle = new Bottle(label, BottleState.NOTHING);
    bottle = bottle.after(LedgerLine.byHand(NOW, "", new BottleEvent.Filled(label.full())));
    for (BottleEvent event : events) {
      bottle = bottle.after(LedgerLine.byHand(NOW, "", event));
    }
    return bottle;
  }

  private static BottleEvent used(double rolls, boolean tabular) {
    return new BottleEvent.Used(
        ml(0), List.of(new FilmUse("R", "film", UnitOfUse.ofRolls(rolls), tabular)));
  }

  /** CK36: acid fixer, 20 rolls/L, 600 mL: 12 rolls (CH-S14 p.108). */
  @Test
  void sixHundredMillilitresOfAcidFixerDoTwelveRolls() {
    BottleLabel label = fixer("acid fixer", 600);
    Capacity capacity = Capacities.of(label).orElseThrow();
    assertThat(capacity.of(ml(600)).rolls()).isEqualTo(12);
    assertThat(capacity.standing()).isEqualTo(Standing.PUBLISHED);
    assertThat(capacity.citation().sourceId()).isEqualTo("CH-S14");
    UnitOfUse left = capacity.leftIn(filled(label, used(4, false)));
    assertThat(Capacity.wholeRolls(left, UnitOfUse.ONE_ROLL, BathKind.FIXER, false)).isEqualTo(8);
  }

  /** CK37: 25 rolls/L with tabular grain: 16.7, so 16 whole rolls a litre (CH-S31 rounds to 17). */
  @Test
  void tabularGrainGetsTwoThirdsOfTheRolls() {
    Capacity capacity = Capacities.of(fixer("alkaline fixer", 1000)).orElseThrow();
    UnitOfUse litre = capacity.of(ml(1000));
    assertThat(litre.rolls()).isEqualTo(25);
    assertThat(litre.rolls() / FilmUse.weight(BathKind.FIXER, true)).isBetween(16.6, 16.7);
    assertThat(Capacity.wholeRolls(litre, UnitOfUse.ONE_ROLL, BathKind.FIXER, true)).isEqualTo(16);
    assertThat(Capacity.wholeRolls(litre, UnitOfUse.ONE_ROLL, BathKind.DEVELOPER, true))
        .isEqualTo(25);
  }

  /** CK38: fresh 45 s: fix 90 s; discard at 90 s; at that moment 2 x is 180 s (CH-S01, CH-S32). */
  @Test
  void aFixerIsSpentWhenClearingHasDoubled() {
    Clearing fresh = clip(45, 20, true);
    Clearing later = clip(90, 20, false);
    double times = Capacities.fixingTimes(false);
    Temperature twenty = Temperature.ofCelsius(20);
    assertThat(FixingTime.after(fresh, times, twenty).time()).isEqualTo(Duration.ofSeconds(90));
    assertThat(FixingTime.after(later, times, twenty).time()).isEqualTo(Duration.ofSeconds(180));
    assertThat(compared(fresh, later)).isEqualTo(new ClearingComparison.Compared(2));
    assertThat(((ClearingComparison.Compared) compared(fresh, later)).spent()).isTrue();
    assertThat(compared(fresh, clip(89, 20, false)))
        .matches(one -> one instanceof ClearingComparison.Compared c && !c.spent());
    Bottle bottle =
        filled(
            fixer("acid fixer", 1000),
            new BottleEvent.Tested(BathTest.CLIP, true, Optional.of(fresh)),
            new BottleEvent.Tested(BathTest.CLIP, true, Optional.of(later)));
    assertThat(verdict(bottle).kind()).isEqualTo(Verdict.Kind.DISCARD);
  }

  /** CK21: a 135-36 strip of 560 cm2 is 86.80 in2; the trade's unit stays 80 in2 (CH-S99). */
  @Test
  void aStripOf135IsMoreThanTheUnitOfTheTrade() {
    UnitOfUse strip = UnitOfUse.ofSquareCentimetres(35 * 1600 / 100.0);
    assertThat(strip.rolls() * 80).isBetween(86.75, 86.85);
    assertThat(UnitOfUse.of135(36)).isEqualTo(UnitOfUse.ONE_ROLL);
  }

  /** CK22: a 120 strip of 61.5 x 830 mm, 510.45 cm2, is 79.12 in2 (CH-S99). */
  @Test
  void aStripOf120IsNearTheUnitOfTheTrade() {
    assertThat(UnitOfUse.ofSquareCentimetres(61.5 * 830 / 100).rolls() * 80)
        .isBetween(79.07, 79.17);
  }

  /** Row RL29 (DV-S15): below 68 °F fixing doubles for every 18 °F, which are 10 K. */
  @Test
  void aColdBathFixesLonger() {
    Clearing clip = clip(30, 20, true);
    assertThat(FixingTime.after(clip, 2, Temperature.ofCelsius(10)).time())
        .isEqualTo(Duration.ofSeconds(120));
    assertThat(FixingTime.after(clip, 2, Temperature.ofCelsius(25)).time())
        .isEqualTo(Duration.ofSeconds(60));
    assertThat(FixingTime.after(clip(60, 10, true), 2, Temperature.ofCelsius(10)).colder())
        .as("the clip was as cold")
        .isEqualTo(1);
    assertThat(Capacities.fixingTimes(true)).isEqualTo(3);
  }

  @Test
  void onlyTheSameClipIsCompared() {
    Clearing fresh = clip(45, 20, true);
    assertThat(compared(fresh, clip(60, 21, false)))
        .isInstanceOf(ClearingComparison.Compared.class);
    assertThat(compared(fresh, clip(60, 21.1, false)))
        .isInstanceOf(ClearingComparison.NotComparable.class);
    Clearing other =
        new Clearing(
            Duration.ofSeconds(60), "another film", "1+9", Temperature.ofCelsius(20), false);
    assertThat(compared(fresh, other))
        .isEqualTo(
            new ClearingComparison.NotComparable(
                List.of(
                    "another film: a film then, another film now",
                    "another dilution: 1+4 then, 1+9 now")));
    Bottle bottle =
        filled(
            fixer("acid fixer", 1000),
            new BottleEvent.Tested(BathTest.CLIP, true, Optional.of(clip(60, 20, false))));
    assertThat(
            VerdictRules.of(
                    bottle,
                    new HereNow(NOW.plus(Duration.ofDays(3)), ZoneOffset.UTC),
                    Optional.empty(),
                    Optional.empty())
                .reasons())
        .anySatisfy(reason -> assertThat(reason.words()).contains("make a baseline"));
  }

  /** The row of any fixer: 2 months at working dilution (CH-S14 p.108). */
  @Test
  void anOldFixerIsTestedAndAVeryOldOneGoes() {
    BottleLabel label = fixer("acid fixer", 1000);
    assertThat(aged(label, 60).kind()).isEqualTo(Verdict.Kind.USE);
    Verdict old = aged(label, 70);
    assertThat(old.kind()).isEqualTo(Verdict.Kind.TEST_FIRST);
    assertThat(old.first().ground()).isEqualTo(Reason.Ground.AGE);
    assertThat(old.first().source()).isEqualTo("CH-S14, p.108");
    assertThat(old.first().words()).startsWith("mixed 70 days ago, too long: any fixer");
    assertThat(aged(label, 130).kind()).isEqualTo(Verdict.Kind.DISCARD);
  }

  /** Rows of D-76 are from memory: a half full bottle keeps less, and says how it is known. */
  @Test
  void aHalfFullBottleKeepsLess() {
    BottleLabel label = BottleLabel.of("D", "D-76", BottleRole.STOCK, BathKind.DEVELOPER, ml(1000));
    Bottle full = filled(label);
    Bottle half = filled(label, new BottleEvent.Taken(ml(500)));
    assertThat(KeepingTimes.of(full).orElseThrow().keeps())
        .isNotEqualTo(KeepingTimes.of(half).orElseThrow().keeps());
    assertThat(KeepingTimes.of(half).orElseThrow().standing()).isEqualTo(Standing.FROM_MEMORY);
    assertThat(verdict(full).first().words()).startsWith("age not known");
    assertThat(verdict(full).kind()).isEqualTo(Verdict.Kind.TEST_FIRST);
  }

  @Test
  void whatHasDoneItsRollsGoes() {
    BottleLabel label = fixer("acid fixer", 600);
    assertThat(verdict(filled(label, used(11.5, false))).kind()).isEqualTo(Verdict.Kind.TEST_FIRST);
    Verdict spent = verdict(filled(label, used(8, true)));
    assertThat(spent.kind()).isEqualTo(Verdict.Kind.DISCARD);
    assertThat(spent.first().ground()).isEqualTo(Reason.Ground.CAPACITY);
    assertThat(spent.first().source()).isEqualTo("CH-S14, p.108");
    assertThat(verdict(filled(label.with(AfterPouring.ONE_SHOT), used(30, false))).kind())
        .isEqualTo(Verdict.Kind.USE);
  }

  @Test
  void wasteIsNeverUsed() {
    BottleLabel label =
        BottleLabel.of("X", "used fixer", BottleRole.WASTE, BathKind.FIXER, ml(5000));
    assertThat(verdict(filled(label)).first().words()).contains("local authority");
  }

  /** Rows P016 to P020 (DV-T06): D-76 stock, 1 L, rolls 1 to 4 7:30, 10 9:00, 11 without a time. */
  @Test
  void aReusedDeveloperTakesLongerUntilItsTableEnds() {
    ReuseTable table = BathReuse.of("D-76").get(0);
    assertThat(table.at(4))
        .matches(a -> a instanceof ReuseTable.Known k && k.time().equals(Duration.ofSeconds(450)));
    assertThat(table.at(5))
        .matches(a -> a instanceof ReuseTable.Known k && k.time().equals(Duration.ofSeconds(480)));
    assertThat(table.at(10))
        .matches(a -> a instanceof ReuseTable.Known k && k.time().equals(Duration.ofSeconds(540)));
    assertThat(table.at(11)).isEqualTo(new ReuseTable.Ended(11, 10));
    assertThat(table.next(UnitOfUse.ofRolls(2), ml(500)).roll())
        .as("two rolls in half a litre are four in one")
        .isEqualTo(5);
    assertThat(BathReuse.of("Fujidol E").get(0).last()).isEqualTo(12);
  }

  /** Row of the replenished bath (CH-S13 p.110): 2 to 3 % of the tank at once. */
  @Test
  void aBathIsReplenishedInSmallPartsToTheMark() {
    assertThat(Capacities.mostAtOnce()).isEqualTo(0.02);
    Replenishing plan =
        Replenishing.of(ml(2000), ml(1970), ml(44), UnitOfUse.ofRolls(3), Capacities.mostAtOnce());
    assertThat(plan.total()).isEqualTo(ml(132));
    assertThat(plan.parts()).hasSize(4);
    double level = 1970;
    for (Replenishing.Part part : plan.parts()) {
      assertThat(part.add().millilitres()).isLessThanOrEqualTo(2000 * 0.02);
      level += part.add().millilitres() + part.back().millilitres() - part.out().millilitres();
      assertThat(level).isLessThanOrEqualTo(2000 + 1e-9);
    }
    assertThat(level).isBetween(2000 - 1e-9, 2000 + 1e-9);
    assertThat(plan.waste().millilitres()).isBetween(102 - 1e-9, 102 + 1e-9);
  }

  private static Clearing clip(double seconds, double celsius, boolean baseline) {
    return new Clearing(
        Duration.ofMillis(Math.round(seconds * 1000)),
        "a film",
        "1+4",
        Temperature.ofCelsius(celsius),
        baseline);
  }

  private static ClearingComparison compared(Clearing fresh, Clearing later) {
    return ClearingComparison.of(Optional.of(fresh), later);
  }

  private static Verdict aged(BottleLabel label, int days) {
    return judged(filled(label), LocalDate.of(2026, 3, 1).plusDays(days));
  }

  private static Verdict verdict(Bottle bottle) {
    return judged(bottle, day(NOW));
  }

  private static Verdict judged(Bottle bottle, LocalDate today) {
    Instant now = today.atTime(12, 0).toInstant(ZoneOffset.UTC);
    return VerdictRules.of(
        bottle,
        new HereNow(now, ZoneOffset.UTC),
        KeepingTimes.of(bottle),
        Capacities.of(bottle.label()));
  }

  private static LocalDate day(Instant at) {
    return LocalDate.ofInstant(at, ZoneOffset.UTC);
  }
}
