package org.wetside.core.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Patterns are told apart by pitch and rhythm. The measure: the share of the longer one's time in
 * which the other has another pitch, or is silent while this one sounds.
 */
class TonePatternsTest {
  private static final double LEAST_SHARE = 0.35;

  private static Map<String, Tone> patterns() {
    Map<String, Tone> patterns = new LinkedHashMap<>();
    for (Act act : Act.values()) {
      patterns.put(act.word(), ActSignals.tone(act));
    }
    patterns.put("mishap", Sounds.MISHAP);
    return patterns;
  }

  private static int pitch(Tone tone, int millisecond) {
    int end = 0;
    for (Tone.Note note : tone.notes()) {
      end += note.milliseconds();
      if (millisecond < end) {
        return note.hertz();
      }
    }
    return 0;
  }

  private static double share(Tone one, Tone other) {
    int longer = Math.max(one.milliseconds(), other.milliseconds());
    int different = 0;
    for (int at = 0; at < longer; at++) {
      different += pitch(one, at) == pitch(other, at) ? 0 : 1;
    }
    return different / (double) longer;
  }

  @Test
  void everyPatternDiffersFromEveryOtherForAThirdOfItsTime() {
    Map<String, Tone> patterns = patterns();
    patterns.forEach(
        (name, tone) ->
            patterns.forEach(
                (other, otherTone) -> {
                  if (!name.equals(other)) {
                    assertThat(share(tone, otherTone))
                        .as(name + " and " + other)
                        .isGreaterThanOrEqualTo(LEAST_SHARE);
                  }
                }));
  }

  @Test
  void theTicksHaveAPitchThatNoActHasAndAreSofter() {
    List<Integer> ofActs =
        patterns().values().stream()
            .flatMap(tone -> tone.notes().stream())
            .map(Tone.Note::hertz)
            .toList();
    for (Tone tick : List.of(Sounds.COUNT_IN, Sounds.ALIVE)) {
      assertThat(tick.notes()).hasSize(1);
      assertThat(ofActs).doesNotContain(tick.notes().get(0).hertz());
    }
    assertThat(Sounds.SOFT).isLessThan(Sounds.LOUD / 2);
  }
}
