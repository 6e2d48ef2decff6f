package org.wetside.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BathTest;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleMark;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.Clearing;
import org.wetside.core.shelf.FilmUse;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.core.shelf.MarkSeen;
import org.wetside.core.shelf.MarkedRoll;
import org.wetside.core.shelf.PostedLine;
import org.wetside.core.shelf.RecalledRoll;
import org.wetside.core.shelf.RollMarks;

/** What is kept beside a ledger, in a real file, is what the ledger comes to. All is invented. */
class LedgerKeptTest {
  private static final Instant NOW = Instant.parse("2026-01-10T18:00:00Z");

  @TempDir Path folder;
  private Database database;

  @BeforeEach
  void open() {
    database = Database.open(folder.resolve("wetside.db"));
    put("F");
  }

  @AfterEach
  void close() {
    database.close();
  }

  private void put(String letter) {
    database.change(
        s ->
            new Bottles(s)
                .add(
                    BottleLabel.of(letter, "fixer", BottleRole.WORKING, BathKind.FIXER, ml(1000)),
                    ml(1000),
                    NOW));
  }

  private static Volume ml(double millilitres) {
    return Volume.ofMillilitres(millilitres);
  }

  private static List<FilmUse> roll(String number) {
    return List.of(new FilmUse(number, "an invented film", UnitOfUse.ONE_ROLL, true));
  }

  private void enter(String letter, BottleEvent what) {
    database.change(s -> new Bottles(s).enter(letter, LedgerLine.byHand(NOW, "", what)));
  }

  private static BottleEvent test(boolean passed) {
    return new BottleEvent.Tested(BathTest.CLIP, passed, Optional.empty());
  }

  private List<String> recalled() {
    return database.read(s -> new Recalls(s).all()).stream().map(RecalledRoll::roll).toList();
  }

  private List<String> complaints() {
    return database.read(s -> new LedgerCheck(s).complaints());
  }

  private void use(String letter, String roll, String run) {
    database.change(
        s -> {
          BottlesInRun bottles = new BottlesInRun(s);
          bottles.debit(letter, ml(300), roll(roll), run, NOW, NOW);
          bottles.giveBack(letter, ml(290), run, NOW, NOW);
        });
  }

  private void mark(BottleMark mark, int run) {
    String number = Integer.toString(run);
    database.change(s -> new BottlesInRun(s).mark("F", mark, "a mishap", number, NOW, NOW));
  }

  private static BottleMark mark(SplittableRandom random) {
    List<BottleMark> all = List.of(BottleMark.values());
    return all.get(random.nextInt(all.size()));
  }

  /**
   * A random evening after another through the store's own doors, with discards and new bottles.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void whatIsKeptIsTheFold(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int given = 0;
    for (int i = 0; i < 60; i++) {
      switch (random.nextInt(14)) {
        case 0 -> enter("F", test(random.nextBoolean()));
        case 1 -> enter("F", new BottleEvent.ToppedUp(ml(20), ml(20)));
        case 2 -> {
          enter("F", new BottleEvent.Discarded());
          put("F");
        }
        case 3 -> {
          List<RecalledRoll> open = database.read(s -> new Recalls(s).all());
          if (!open.isEmpty()) {
            RecalledRoll one = open.get(random.nextInt(open.size()));
            LedgerLine again =
                LedgerLine.byHand(NOW, "", new BottleEvent.Refixed(List.of(one.roll())));
            database.change(s -> new Bottles(s).refixed(one.bottleId(), again));
          }
        }
        case 4 -> {
          String run = Integer.toString(given);
          String number = "R-" + given;
          if (given > 0) {
            database.change(
                s -> new BottlesInRun(s).undoUse("F", ml(10), roll(number), run, NOW, NOW));
          }
        }
        case 5 -> mark(mark(random), given);
        case 6 -> {
          BottleMark mark = mark(random);
          String run = Integer.toString(random.nextInt(given + 1));
          database.change(s -> new BottlesInRun(s).unmark("F", mark, "taken back", run, NOW, NOW));
        }
        case 7 -> enter("F", new BottleEvent.MarkLifted(mark(random)));
        default -> {
          given++;
          use("F", "R-" + given, Integer.toString(given));
        }
      }
      assertThat(complaints()).as("after %d acts", i + 1).isEmpty();
    }
    Set<String> expected = new HashSet<>();
    for (BottleRows.Kept kept : database.read(s -> new BottleRows(s).everyOne())) {
      assertThat(kept.bottle().left().millilitres()).isNotNegative();
      List<LedgerLine> ledger =
          database.read(s -> new LedgerRows(s).all(kept.id())).stream()
              .map(PostedLine::line)
              .toList();
      for (MarkedRoll roll : RollMarks.recalled(BathKind.FIXER, ledger)) {
        expected.add(roll.film().roll());
      }
    }
    assertThat(new HashSet<>(recalled())).isEqualTo(expected);
  }

  @Test
  void aFailedTestRecallsWhatCameSinceTheLastPassedOneEvenAfterItIsDiscarded() {
    use("F", "A", "1");
    enter("F", test(true));
    use("F", "B", "2");
    use("F", "C", "3");
    enter("F", test(false));
    enter("F", new BottleEvent.Discarded());
    put("F");
    use("F", "D", "4");
    assertThat(recalled()).containsExactly("B", "C");
    RecalledRoll b = database.read(s -> new Recalls(s).of("b")).get(0);
    LedgerLine again = LedgerLine.byHand(NOW, "", new BottleEvent.Refixed(List.of("B")));
    database.change(s -> new Bottles(s).refixed(b.bottleId(), again));
    assertThat(recalled()).containsExactly("C");
    assertThat(complaints()).isEmpty();
  }

  /** A run that began before its fixer was discarded still counts in it, and is recalled by it. */
  @Test
  void aRollInTheTankWhenItsFixerIsDiscardedIsNotForgotten() {
    enter("F", test(false));
    enter("F", new BottleEvent.Discarded());
    database.change(
        s ->
            new BottlesInRun(s)
                .debit("F", ml(300), roll("L"), "9", NOW.minusSeconds(60), NOW.plusSeconds(60)));
    assertThat(recalled()).containsExactly("L");
    Bottle gone = database.read(s -> new Bottles(s).findLast("F")).orElseThrow();
    assertThat(gone.film()).isEqualTo(UnitOfUse.ONE_ROLL);
    assertThat(gone.left()).isEqualTo(Volume.ZERO);
    assertThat(gone.discarded()).isTrue();
  }

  @Test
  void everyKindOfLineComesBackAsItWasWritten() {
    Clearing clip =
        new Clearing(
            Duration.ofMillis(45_500), "TRI-X 400", "1+4", Temperature.ofCelsius(20.5), true);
    List<BottleEvent> events = new ArrayList<>();
    events.add(new BottleEvent.Opened(LocalDate.of(2026, 1, 9)));
    events.add(new BottleEvent.Taken(ml(100)));
    events.add(new BottleEvent.PouredBack(ml(90)));
    events.add(new BottleEvent.ToppedUp(ml(20), ml(30)));
    events.add(new BottleEvent.Corrected(ml(900)));
    events.add(new BottleEvent.Tested(BathTest.CLIP, true, Optional.of(clip)));
    events.add(new BottleEvent.Tested(BathTest.IODIDE, false, Optional.empty()));
    events.add(new BottleEvent.Tested(BathTest.LEADER, true, Optional.empty()));
    events.add(new BottleEvent.MovedDown());
    events.add(new BottleEvent.Refixed(List.of("A", "B")));
    events.add(new BottleEvent.Discarded());
    events.forEach(event -> enter("F", event));
    List<LedgerLine> ledger = database.read(s -> new Bottles(s).ledger("F"));
    assertThat(ledger.subList(1, ledger.size()))
        .extracting(LedgerLine::what)
        .containsExactlyElementsOf(events);
    assertThat(complaints()).isEmpty();
  }

  /** What was changed behind the program's back is found. */
  @Test
  void aChangedLineIsFound() {
    use("F", "A", "1");
    database.change(s -> s.change("UPDATE bottle_line SET volume_ml = 200 WHERE kind = 'used'"));
    assertThat(complaints()).isNotEmpty().allSatisfy(said -> assertThat(said).contains("bottle F"));
  }

  @Test
  void aLostRollIsFound() {
    use("F", "A", "1");
    database.change(s -> s.change("DELETE FROM bottle_roll"));
    assertThat(complaints()).isNotEmpty();
  }

  @Test
  void aMarkThatWasForgottenIsFound() {
    mark(BottleMark.DO_NOT_USE, 1);
    database.change(s -> s.change("DELETE FROM bottle_mark"));
    assertThat(complaints()).singleElement(STRING).contains("bottle F", "marks");
  }

  /** An older database has no list of open marks: it is filled when that is opened. */
  @Test
  void openMarksAreFoundAnewFromTheLedger() {
    mark(BottleMark.DO_NOT_USE, 1);
    mark(BottleMark.TEST_FIRST, 2);
    enter("F", test(true));
    List<MarkSeen> seen = marks();
    assertThat(seen).extracting(MarkSeen::mark).containsExactly(BottleMark.DO_NOT_USE);
    database.change(s -> s.change("DELETE FROM bottle_mark"));
    database.change(s -> new BottleRows(s).refoldAll());
    assertThat(marks()).isEqualTo(seen);
    assertThat(complaints()).isEmpty();
  }

  private List<MarkSeen> marks() {
    return database.read(s -> new Bottles(s).find("F")).orElseThrow().state().marks();
  }

  @Test
  void linesEnteredTogetherComeToTheSameAsOneByOne() {
    put("G");
    List<LedgerLine> lines = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      BottleEvent what =
          switch (i % 4) {
            case 0 -> new BottleEvent.Used(ml(300), roll("R-" + i));
            case 1 -> new BottleEvent.PouredBack(ml(290));
            case 2 -> new BottleEvent.ToppedUp(ml(0), ml(10));
            default -> test(i % 8 == 3);
          };
      lines.add(LedgerLine.byHand(NOW, "", what));
    }
    lines.forEach(line -> enter("F", line.what()));
    database.change(s -> new Bottles(s).enterAll("G", lines));
    assertThat(database.read(s -> new Bottles(s).find("G")).orElseThrow().state())
        .isEqualTo(database.read(s -> new Bottles(s).find("F")).orElseThrow().state());
    assertThat(complaints()).isEmpty();
  }

  @Test
  void nothingIsEnteredAfterTheLineThatDiscards() {
    List<LedgerLine> lines =
        List.of(
            LedgerLine.byHand(NOW, "", new BottleEvent.Discarded()),
            LedgerLine.byHand(NOW, "", new BottleEvent.Taken(ml(1))));
    assertThatThrownBy(() -> database.change(s -> new Bottles(s).enterAll("F", lines)))
        .isInstanceOf(StoreException.class)
        .hasMessageContaining("no bottle F");
    List<LedgerLine> kept = database.read(s -> new Bottles(s).ledger("F"));
    assertThat(kept).hasSize(1);
  }

  @Test
  void aPageOfALedgerIsItsNewestPart() {
    for (int i = 0; i < 30; i++) {
      use("F", "R-" + i, "" + i);
    }
    List<PostedLine> page = database.read(s -> new Bottles(s).page("F", Long.MAX_VALUE, 5));
    assertThat(page).hasSize(5);
    List<PostedLine> older = database.read(s -> new Bottles(s).page("F", page.get(4).id(), 100));
    assertThat(older).hasSize(56);
    assertThat(older.get(0).id()).isLessThan(page.get(4).id());
    assertThat(((BottleEvent.Used) page.get(1).line().what()).film()).isEqualTo(roll("R-29"));
  }
}
