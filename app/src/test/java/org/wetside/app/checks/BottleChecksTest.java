package org.wetside.app.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.core.bath.BathKind;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.AfterPouring;
import org.wetside.core.shelf.BathTest;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.FixerPair;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.reference.BuiltInProcesses;
import org.wetside.store.Bottles;
import org.wetside.store.Database;
import org.wetside.store.FixerPairs;

/** What the shelf says of a bottle before it is poured; the bottles are invented. */
class BottleChecksTest {
  private static final Instant NOW = Instant.parse("2026-01-14T19:00:00Z");

  private Database database;

  @BeforeEach
  void open(@TempDir Path folder) {
    database = Database.open(folder.resolve("wetside.db"));
  }

  @AfterEach
  void close() {
    database.close();
  }

  private void put(
      String letter, String contents, BottleRole role, BathKind bath, double leftMl, String note) {
    database.change(
        session ->
            new Bottles(session)
                .add(
                    BottleLabel.of(letter, contents, role, bath, Volume.ofLitres(2))
                        .with(AfterPouring.REUSED)
                        .withNote(note),
                    Volume.ofMillilitres(leftMl),
                    NOW.minusSeconds(86_400)));
  }

  private void tested(String letter, BathTest test, boolean passed) {
    database.change(
        session ->
            new Bottles(session)
                .enter(
                    letter,
                    LedgerLine.byHand(
                        NOW, "", new BottleEvent.Tested(test, passed, Optional.empty()))));
  }

  private Check check(StepKind kind, String letter) {
    Step step =
        BuiltInProcesses.all().stream()
            .filter(p -> p.slug().equals("small-tank"))
            .findFirst()
            .orElseThrow()
            .steps()
            .stream()
            .filter(one -> one.kind() == kind)
            .findFirst()
            .orElseThrow()
            .withBottle(letter);
    Pour pour =
        new Pour(
            1,
            Optional.empty(),
            "Double",
            "soup",
            "1+1",
            List.of(),
            List.of(step),
            List.of(Optional.of(Volume.ofMillilitres(600))),
            List.of(),
            NOW,
            Units.METRIC);
    return database.<Check>read(session -> new BottleChecks(pour, session).all().get(0));
  }

  @Test
  void aBottleInGoodOrderIsNotAskedAbout() {
    put("F", "fix", BottleRole.WORKING, BathKind.FIXER, 1000, "");
    Check check = check(StepKind.FIXER, "F");
    assertThat(check.state()).isEqualTo(CheckState.DONE);
    assertThat(check.text()).isEqualTo("Fixer, bottle F: 1000 mL of fix");
  }

  @Test
  void aBottleThatIsNotOnTheShelfIsOpenNeverPassed() {
    assertThat(check(StepKind.FIXER, "F").state()).isEqualTo(CheckState.OPEN);
    assertThat(check(StepKind.FIXER, "F").text()).endsWith("not on the shelf");
  }

  /** One row per case: contents, role, left, note, state, words. */
  @ParameterizedTest
  @CsvSource({
    "soup,   STOCK,       1000, '',                   DONE,    1000 mL of soup",
    "Soup X, STOCK,       1000, '',                   DONE,    1000 mL of Soup X",
    "broth,  STOCK,       1000, '',                   WARNING, 'holds broth, the load was timed for soup'",
    "soup,   WORKING,     1000, 1+1,                  DONE,    1000 mL of soup",
    "soup,   WORKING,     1000, mixed 1+3,            WARNING, 'wrong dilution, 1+3 stands on it'",
    "soup,   STOCK,       500,  '',                   WARNING, 'holds 500 mL, 600 mL are wanted'",
    "soup,   STOCK,       0,    '',                   WARNING, 'holds 0 mL, 600 mL are wanted'",
    "soup,   STOCK,       1000, Test first,           OPEN,    test first",
    "soup,   STOCK,       1000, do not use,           WARNING, '\"do not use\" stands on it'",
    "soup,   STOCK,       1000, use by 2026-01-13,    WARNING, out of date since 13 January",
    "soup,   STOCK,       1000, use by 2026-01-14,    DONE,    1000 mL of soup",
  })
  void theDeveloperIsJudgedByItsLabelAndItsBook(
      String contents, BottleRole role, double left, String note, CheckState state, String words) {
    put("D", contents, role, BathKind.DEVELOPER, left, note);
    Check check = check(StepKind.DEVELOPER, "D");
    assertThat(check.text()).contains(words);
    assertThat(check.state()).isEqualTo(state);
    assertThat(check.advice().isEmpty()).isEqualTo(state == CheckState.DONE);
  }

  @Test
  void concentrateIsNoWorkingBath() {
    put("F", "fix", BottleRole.CONCENTRATE, BathKind.FIXER, 1000, "");
    assertThat(check(StepKind.FIXER, "F").text()).contains("wrong dilution, it holds concentrate");
  }

  @Test
  void aTestSaysWhetherItIsSpent() {
    put("F", "fix", BottleRole.WORKING, BathKind.FIXER, 1000, "test first");
    tested("F", BathTest.CLIP, false);
    assertThat(check(StepKind.FIXER, "F").state()).isEqualTo(CheckState.WARNING);
    assertThat(check(StepKind.FIXER, "F").text())
        .contains("spent, its clip test failed on 14 January");
    tested("F", BathTest.CLIP, true);
    assertThat(check(StepKind.FIXER, "F").state()).isEqualTo(CheckState.DONE);
  }

  /** Film clears in the first of two fixers and stays as long again in the second (CH-S01). */
  @Test
  void theFirstOfTwoFixersSaysWhereTheSecondHalfIs() {
    put("F", "some fixer", BottleRole.WORKING, BathKind.FIXER, 1000, "");
    put("G", "some fixer", BottleRole.WORKING, BathKind.FIXER, 1000, "");
    assertThat(check(StepKind.FIXER, "F").text()).doesNotContain("of two fixers");
    database.change(session -> new FixerPairs(session).add(new FixerPair("F", "G", 0)));
    Check first = check(StepKind.FIXER, "F");
    assertThat(first.state()).isEqualTo(CheckState.OPEN);
    assertThat(first.text()).contains("first of two fixers");
    assertThat(first.advice()).contains("then half in G (CH-S01)");
    assertThat(check(StepKind.FIXER, "G").advice()).contains("clears in F first");
  }
}
