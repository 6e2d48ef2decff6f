package org.wetside.core.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.Volume;

/** No sequence of events makes a bottle negative, loses a unit of film or forgets a roll. */
class LedgerFoldTest {
  private static final int SEEDS = 400;
  private static final int LENGTH = 120;

  @Test
  void noSequenceMakesABottleNegativeOrLosesFilm() {
    for (long seed = 1; seed <= SEEDS; seed++) {
      List<LedgerLine> ledger = new RandomLedger(seed).of(LENGTH);
      BottleState state = BottleState.NOTHING;
      double film = 0;
      double load = 0;
      for (LedgerLine line : ledger) {
        state = state.after(line, BathKind.FIXER);
        film += sign(line) * film(line).stream().mapToDouble(f -> f.amount().rolls()).sum();
        load = Math.max(load, state.load().rolls());
        assertThat(state.left().millilitres()).as("seed %d", seed).isNotNegative();
        assertThat(state.basis().millilitres()).isNotNegative();
        assertThat(state.film().rolls()).as("seed %d", seed).isCloseTo(film, within(1e-9));
      }
      assertThat(state).isEqualTo(BottleState.of(BathKind.FIXER, ledger));
      assertThat(state.lines()).isEqualTo(ledger.size());
      assertThat(load).isPositive();
    }
  }

  /**
   * Beside the fold, the rule in plain words: a roll that went in after the last passed test and
   * before a failed one, or while the last test was a failed one, is on the list until it was fixed
   * again.
   */
  @Test
  void noSequenceForgetsARollForTheRecallList() {
    int seen = 0;
    for (long seed = 1; seed <= SEEDS; seed++) {
      List<LedgerLine> ledger = new RandomLedger(seed).of(LENGTH);
      Set<String> expected = new HashSet<>();
      for (int i = 0; i < ledger.size(); i++) {
        for (FilmUse roll : used(ledger.get(i))) {
          if (isRecalled(ledger, i, roll.roll())) {
            expected.add(roll.roll());
          }
        }
      }
      assertThat(RollMarks.recalled(BathKind.FIXER, ledger))
          .as("seed %d", seed)
          .extracting(roll -> roll.film().roll())
          .containsExactlyInAnyOrderElementsOf(expected);
      seen += expected.size();
    }
    assertThat(seen).as("rolls that were recalled in all").isGreaterThan(SEEDS);
  }

  private static boolean isRecalled(List<LedgerLine> ledger, int at, String roll) {
    boolean spent = false;
    for (int i = 0; i < at; i++) {
      spent = decided(ledger.get(i), spent);
    }
    boolean recalled = spent;
    boolean decided = spent;
    for (int i = at + 1; i < ledger.size(); i++) {
      BottleEvent what = ledger.get(i).what();
      if (what instanceof BottleEvent.UseUndone
          && ledger.get(i).run().equals(ledger.get(at).run())) {
        return false;
      }
      if (!decided && isTest(what)) {
        decided = true;
        recalled = !((BottleEvent.Tested) what).passed();
      }
      if (recalled && what instanceof BottleEvent.Refixed again && again.rolls().contains(roll)) {
        recalled = false;
      }
    }
    return recalled;
  }

  private static boolean decided(LedgerLine line, boolean before) {
    return isTest(line.what()) ? !((BottleEvent.Tested) line.what()).passed() : before;
  }

  private static boolean isTest(BottleEvent what) {
    return what instanceof BottleEvent.Tested test && test.test().ofFixer();
  }

  private static List<FilmUse> used(LedgerLine line) {
    return line.what() instanceof BottleEvent.Used use ? use.film() : List.of();
  }

  private static List<FilmUse> film(LedgerLine line) {
    return line.what() instanceof BottleEvent.UseUndone undone ? undone.film() : used(line);
  }

  private static int sign(LedgerLine line) {
    return line.what() instanceof BottleEvent.UseUndone ? -1 : 1;
  }

  /** Half of a used bath taken away leaves half of what film has left in it. */
  @ParameterizedTest
  @ValueSource(doubles = {100, 250, 500, 999})
  void whatIsTakenOutTakesItsShareAlong(double taken) {
    List<LedgerLine> ledger =
        List.of(
            line(new BottleEvent.Filled(ml(1000))),
            line(new BottleEvent.Used(ml(300), List.of(FilmUse.unnamed(UnitOfUse.ofRolls(8))))),
            line(new BottleEvent.PouredBack(ml(300))),
            line(new BottleEvent.Taken(ml(taken))));
    BottleState state = BottleState.of(BathKind.FIXER, ledger);
    double share = 1 - taken / 1000;
    assertThat(state.load().rolls()).isCloseTo(8 * share, within(1e-9));
    assertThat(state.basis().millilitres()).isCloseTo(1000 * share, within(1e-9));
    assertThat(state.film()).isEqualTo(UnitOfUse.ofRolls(8));
  }

  private static LedgerLine line(BottleEvent what) {
    return LedgerLine.byHand(RandomLedger.BEGIN, "", what);
  }

  private static Volume ml(double millilitres) {
    return Volume.ofMillilitres(millilitres);
  }
}
