package org.wetside.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.checks.Closing;
import org.wetside.app.equipment.KeepTankChecks;
import org.wetside.core.plan.ClosingItem;
import org.wetside.core.run.Happening;
import org.wetside.core.run.PassedOver;

/** When the check of the closed tank is whole, and when it is short. */
class ClosingLengthTest {
  @TempDir Path folder;

  private Winter winter() {
    return new Winter(folder.resolve("wetside.db"));
  }

  private static List<String> ids(Closing closing) {
    return closing.items().stream().map(ClosingItem::id).toList();
  }

  @Test
  void tenCleanRunsShortenItToWhatLosesFilmMost() {
    try (Winter winter = winter()) {
      assertThat(winter.before("Double").closing().because()).isEqualTo("The first run.");
      winter.clean("Double", 9);
      Closing nine = winter.before("Double").closing();
      assertThat(nine.whole()).isTrue();
      assertThat(nine.because()).startsWith("9 of ten clean runs with Double");
      winter.clean("Double", 1);
      Closing ten = winter.before("Double").closing();
      assertThat(ten.whole()).isFalse();
      assertThat(ids(ten)).containsExactly("centre-core", "lid-locked", "tug");
    }
  }

  @Test
  void itComesBackWholeAfterAnotherTankAndAfterTwoMonths() {
    try (Winter winter = winter()) {
      winter.clean("Double", 10);
      winter.clean("Single", 1);
      assertThat(winter.before("Double").closing().because())
          .isEqualTo("Another tank than last time.");
      winter.clean("Double", 1);
      assertThat(winter.before("Double").closing().whole()).isFalse();
      winter.clock.passUnwatched(Duration.ofDays(62));
      assertThat(winter.before("Double").closing().because()).isEqualTo("Two months without use.");
    }
  }

  @Test
  void aChangedTankIsAnotherOne() {
    try (Winter winter = winter()) {
      winter.clean("Double", 10);
      winter.tank("Double", 700);
      assertThat(winter.before("Double").closing().because())
          .isEqualTo("The tank was changed since last time.");
      winter.clean("Double", 1);
      assertThat(winter.before("Double").closing().because()).startsWith("1 of ten");
    }
  }

  @Test
  void aLidThatCameOffAsksForTenCleanRunsAnew() {
    try (Winter winter = winter()) {
      winter.clean("Double", 10);
      long run = winter.opened("Double", "");
      winter.send(run, new Happening.Started(List.of("centre-core", "lid-locked", "tug"), false));
      winter.send(
          run, new Happening.Mishap("lid came off before the fixer", "lid on", Optional.empty()));
      winter.hang(run);
      assertThat(winter.before("Double").closing().because()).startsWith("0 of ten");
      winter.clean("Double", 10);
      assertThat(winter.before("Double").closing().whole()).isFalse();
    }
  }

  @Test
  void aCheckThatWasPassedOverProvesNothing() {
    try (Winter winter = winter()) {
      winter.clean("Double", 9);
      long run = winter.opened("Double", "");
      List<String> all = winter.bench.look(run).before().mustBeAnswered();
      winter.send(
          run,
          new Happening.Started(all.subList(0, 5), List.of(new PassedOver("tug", "")), "", false));
      winter.hang(run);
      assertThat(winter.before("Double").closing().because()).startsWith("0 of ten");
    }
  }

  @Test
  void anOwnListIsAskedAndShrinksToItsStars() {
    try (Winter winter = winter()) {
      KeepTankChecks lists = new KeepTankChecks(() -> winter.database);
      lists.put("Single", ClosingItem.parse("Spring on the reel\n* Lid screwed home"));
      assertThat(ids(winter.before("Single").closing()))
          .containsExactly("own-spring-on-the-reel", "own-lid-screwed-home");
      for (int i = 0; i < 10; i++) {
        long run = winter.opened("Single", "");
        winter.send(
            run, new Happening.Started(winter.bench.look(run).before().mustBeAnswered(), false));
        winter.hang(run);
      }
      assertThat(ids(winter.before("Single").closing())).containsExactly("own-lid-screwed-home");
      lists.put("Single", List.of());
      assertThat(lists.of("single")).hasSize(6);
    }
  }
}
