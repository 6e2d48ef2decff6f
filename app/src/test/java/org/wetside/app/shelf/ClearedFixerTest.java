package org.wetside.app.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.app.trial.JudgeTest;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.Clearing;
import org.wetside.core.trial.Trial;
import org.wetside.store.Recalls;

/** What a clearing time that was typed says of the rolls and of the next fixing time. */
class ClearedFixerTest {
  private KeptShelf shelf;

  @BeforeEach
  void open(@TempDir Path home) {
    shelf = new KeptShelf(home);
  }

  @AfterEach
  void close() {
    shelf.close();
  }

  private static Clearing clip(int seconds, boolean baseline) {
    return new Clearing(
        Duration.ofSeconds(seconds), "some film", "1+4", Temperature.ofCelsius(20), baseline);
  }

  /** Clearing that takes twice as long is the end of a fixer (CH-S01, CH-S32). */
  @Test
  void aDoubledTimeRecallsItsRollsWhateverWasPressed() {
    shelf.bottle("F", "some fixer", BottleRole.WORKING, BathKind.FIXER, 1000);
    JudgeTest tests = new JudgeTest(shelf.database, KeptShelf.CLOCK);
    tests.clip("F", true, clip(45, true), "");
    shelf.film("F", 2);
    tests.clip("F", true, clip(89, false), "");
    shelf.film("F", 2);
    assertThat(recalled()).isZero();
    tests.clip("F", true, clip(90, false), "");
    assertThat(recalled()).isEqualTo(2);
  }

  /** Another film, or a fixer that had film through it and was called fresh, proves nothing. */
  @Test
  void aTimeThatCannotBeComparedVouchesForNoRoll() {
    shelf.bottle("F", "some fixer", BottleRole.WORKING, BathKind.FIXER, 1000);
    JudgeTest tests = new JudgeTest(shelf.database, KeptShelf.CLOCK);
    tests.clip("F", true, clip(45, true), "");
    shelf.film("F", 2);
    Clearing other =
        new Clearing(
            Duration.ofSeconds(40), "another film", "1+4", Temperature.ofCelsius(20), false);
    assertThat(outcome(tests.clip("F", true, other, ""))).isEqualTo("not comparable");
    assertThat(outcome(tests.clip("F", true, clip(80, true), ""))).isEqualTo("not comparable");
    assertThat(outcome(tests.clip("F", true, clip(88, false), ""))).isEqualTo("passed");
    shelf.film("F", 1);
    assertThat(outcome(tests.clip("F", false, other, "still milky at the rim")))
        .isEqualTo("failed");
    assertThat(recalled()).isEqualTo(1);
  }

  @Test
  void aFreshFixerThatFailsIsRefused() {
    shelf.bottle("F", "some fixer", BottleRole.WORKING, BathKind.FIXER, 1000);
    JudgeTest tests = new JudgeTest(shelf.database, KeptShelf.CLOCK);
    assertThatThrownBy(() -> tests.clip("F", false, clip(45, true), ""))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("a fresh fixer that fails is no measure");
  }

  private static String outcome(Trial trial) {
    return trial.end().orElseThrow().outcome().word();
  }

  private int recalled() {
    return shelf.database.read(session -> new Recalls(session).count());
  }

  /** Two times the clearing time, three times in TF-3 (CH-S31, CH-S38). */
  @ParameterizedTest
  @CsvSource({"some fixer, 60", "TF-3, 90"})
  void theFixerItselfMayAskForThreeTimes(String contents, int seconds) {
    shelf.bottle("F", contents, BottleRole.WORKING, BathKind.FIXER, 1000);
    new JudgeTest(shelf.database, KeptShelf.CLOCK).clip("F", true, clip(30, true), "");
    JudgedBottle judged = new JudgeBottles(shelf.database, KeptShelf.CLOCK).find("F").orElseThrow();
    assertThat(TimeSpan.toSeconds(judged.fixing().orElseThrow().time())).isEqualTo(seconds);
  }
}
