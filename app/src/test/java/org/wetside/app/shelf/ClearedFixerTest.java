package org.wetside.app.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.Clearing;
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
    ChangeBottle change = new ChangeBottle(shelf.database, KeptShelf.CLOCK);
    change.cleared("F", true, clip(45, true), "");
    shelf.film("F", 2);
    change.cleared("F", true, clip(89, false), "");
    shelf.film("F", 2);
    assertThat(recalled()).isZero();
    change.cleared("F", true, clip(90, false), "");
    assertThat(recalled()).isEqualTo(2);
  }

  private int recalled() {
    return shelf.database.read(session -> new Recalls(session).count());
  }

  /** Two times the clearing time, three times in TF-3 (CH-S31, CH-S38). */
  @ParameterizedTest
  @CsvSource({"some fixer, 60", "TF-3, 90"})
  void theFixerItselfMayAskForThreeTimes(String contents, int seconds) {
    shelf.bottle("F", contents, BottleRole.WORKING, BathKind.FIXER, 1000);
    new ChangeBottle(shelf.database, KeptShelf.CLOCK).cleared("F", true, clip(30, true), "");
    JudgedBottle judged = new JudgeBottles(shelf.database, KeptShelf.CLOCK).find("F").orElseThrow();
    assertThat(TimeSpan.toSeconds(judged.fixing().orElseThrow().time())).isEqualTo(seconds);
  }
}
