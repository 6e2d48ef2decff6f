package org.wetside.core.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.shelf.Clearing;

/** Clearing times, compared only where they may be. */
class ClearingRuleTest {
  private static final Clearing FIRST = clip(45, "TRI-X 400", "1+4", 20, true);

  /** What had film through it is not fresh, whatever is said of it. */
  @Test
  void aFirstTimeInUsedSolutionIsNoBaseline() {
    assertThat(ClearingRule.cleared(FIRST, Optional.of(FIRST), true))
        .isEqualTo(new TrialOutcome.NotComparable(List.of(ClearingRule.USED)));
  }

  @Test
  void theFirstTimeInFreshSolutionIsTheBaseline() {
    assertThat(ClearingRule.cleared(FIRST, Optional.empty(), false))
        .isEqualTo(new TrialOutcome.BaselineMade());
  }

  /** CK38: fresh 45 s, discard when clearing reaches 90 s (CH-S01, CH-S32). */
  @ParameterizedTest
  @CsvSource({"44, passed", "45, passed", "89.9, passed", "90, failed", "90.1, failed"})
  void spentAtTwiceTheFirstTimeAndNotBefore(double seconds, String word) {
    TrialOutcome outcome =
        ClearingRule.cleared(
            clip(seconds, "TRI-X 400", "1+4", 20, false), Optional.of(FIRST), false);
    assertThat(outcome.word()).isEqualTo(word);
    assertThat(ClearingRule.spentAt(FIRST)).isEqualTo(Duration.ofSeconds(90));
  }

  @ParameterizedTest
  @CsvSource({
    "TRI-X 400, 1+4, 21.0, ''",
    "TRI-X 400, 1+4, 19.0, ''",
    "tri-x 400, 1+4, 20.0, ''",
    "TRI-X 400, 1+4, 21.1, another temperature: 20 °C then; 21.1 °C now",
    "TRI-X 400, 1+4, 18.9, another temperature: 20 °C then; 18.9 °C now",
    "T-MAX 400, 1+4, 20.0, another film: TRI-X 400 then; T-MAX 400 now",
    "TRI-X 400, 1+9, 20.0, another dilution: 1+4 then; 1+9 now"
  })
  void onlyLikeIsComparedWithLike(String film, String dilution, double celsius, String said) {
    TrialOutcome outcome =
        ClearingRule.cleared(clip(60, film, dilution, celsius, false), Optional.of(FIRST), false);
    if (said.isEmpty()) {
      assertThat(outcome).isInstanceOf(TrialOutcome.Passed.class);
    } else {
      assertThat(((TrialOutcome.NotComparable) outcome).why())
          .containsExactly(said.replace(';', ','));
    }
  }

  @Test
  void withoutABaselineNothingIsPassed() {
    assertThat(
            ClearingRule.cleared(clip(20, "TRI-X 400", "1+4", 20, false), Optional.empty(), false))
        .isInstanceOf(TrialOutcome.NotComparable.class);
  }

  @Test
  void aClipTakenOutTooEarlyIsNotCalledSpent() {
    assertThat(ClearingRule.notClear(clip(89, "TRI-X 400", "1+4", 20, false), Optional.of(FIRST)))
        .isEqualTo(
            new TrialOutcome.NotJudged(
                "it was taken out after 1:29; spent is said only from 1:30"));
    assertThat(ClearingRule.notClear(clip(90, "TRI-X 400", "1+4", 20, false), Optional.of(FIRST)))
        .isEqualTo(new TrialOutcome.Failed(OptionalDouble.of(2)));
    assertThat(ClearingRule.notClear(clip(600, "TRI-X 400", "1+4", 20, false), Optional.empty()))
        .isInstanceOf(TrialOutcome.NotJudged.class);
    assertThat(ClearingRule.notClear(clip(600, "T-MAX 400", "1+4", 20, false), Optional.of(FIRST)))
        .isInstanceOf(TrialOutcome.NotJudged.class);
  }

  /** Longer never turns a failed time into a passed one, whatever the baseline. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void longerIsNeverBetter(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 500; i++) {
      Clearing first = clip(5 + random.nextInt(300), "TRI-X 400", "1+4", 20, true);
      double one = 1 + random.nextInt(1200) / 2.0;
      double more = one + random.nextInt(100) / 3.0;
      boolean failedAtOne = failed(one, first);
      assertThat(failedAtOne && !failed(more, first)).as("%s, %s, %s", first, one, more).isFalse();
      double times = one / TimeSpan.toSeconds(first.time());
      assertThat(failedAtOne).isEqualTo(times >= 2 - 1e-9);
    }
  }

  private static boolean failed(double seconds, Clearing first) {
    return ClearingRule.cleared(
            clip(seconds, "TRI-X 400", "1+4", 20, false), Optional.of(first), false)
        instanceof TrialOutcome.Failed;
  }

  private static Clearing clip(
      double seconds, String film, String dilution, double celsius, boolean baseline) {
    return new Clearing(
        TimeSpan.ofSeconds(seconds), film, dilution, Temperature.ofCelsius(celsius), baseline);
  }
}
