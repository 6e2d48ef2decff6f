package org.wetside.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.core.quantity.BadValueException;

/** Agitation as a line of words, and back. */
class AgitationTextTest {
  private static final List<Manner> MANNERS = List.of(Manner.values());

  @Test
  void theHandbooksWayIsWrittenAndReadBack() {
    assertThat(AgitationText.of(SomeSteps.handbook())).isEqualTo("30 s, then 5 s every 60 s, tap");
    assertThat(AgitationText.parse("30s, then 5s every 1:00, tap")).isEqualTo(SomeSteps.handbook());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          none                                | none
          Continuous                          | continuous
          rotary 30                           | rotary 30 rev/min
          rotary 27.5 rpm                     | rotary 27.5 rev/min
          stand 30s                           | stand 30 s
          stand                               | stand
          semi-stand 30s, then 5s, tap        | semi-stand 30 s, then 5 s, tap
          film lift 10x, then 4x every 60s    | film lift 10x, then 4x every 60 s
          10x in 20s, 4× every 1min           | 10x in 20 s, then 4x every 60 s
          inversion 30 s                      | 30 s
          5 s every 60 s                      | inversion 5 s every 60 s
          inversion                           | inversion
          """)
  void eachWayIsReadAndWrittenOneWay(String typed, String written) {
    AgitationSchedule read = AgitationText.parse(typed);
    assertThat(AgitationText.of(read)).isEqualTo(written);
    assertThat(AgitationText.parse(written)).isEqualTo(read);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          now and then                | write it like
          30                          | unit
          30s, then 5s                | how often
          continuous, tap             | stands alone
          none 30s                    | stands alone
          rotary                      | speed
          rotary 900                  | 300 rev/min
          stand 30s, then 5s          | once
          semi-stand 30s, then 5s every 60s | no interval
          30s, then 5s every 2s       | between 5 s
          30s, then 50s every 20s     | at least the 50 s
          0x, then 4x every 60s       | at least 1
          0s                          | 0.5 s
          """)
  void whatCannotBeMeantIsRefusedWithItsLimit(String typed, String says) {
    assertThatThrownBy(() -> AgitationText.parse(typed))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining(says);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void anyScheduleSurvivesTheWay(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 500; i++) {
      AgitationSchedule any = any(random);
      assertThat(AgitationText.parse(AgitationText.of(any))).isEqualTo(any);
    }
  }

  private static AgitationSchedule any(SplittableRandom random) {
    Manner manner = MANNERS.get(random.nextInt(MANNERS.size()));
    boolean repeats = manner == Manner.INVERSION || manner == Manner.FILM_LIFT;
    boolean bouts = repeats || manner == Manner.STAND || manner == Manner.SEMI_STAND;
    Optional<Cycle> cycle =
        (repeats || manner == Manner.SEMI_STAND) && random.nextBoolean()
            ? Optional.of(bout(random))
            : Optional.empty();
    return new AgitationSchedule(
        manner,
        bouts && random.nextBoolean() ? Optional.of(bout(random)) : Optional.empty(),
        repeats && cycle.isPresent() ? Duration.ofSeconds(random.nextInt(60, 900)) : Duration.ZERO,
        cycle,
        bouts && random.nextBoolean(),
        manner == Manner.ROTARY ? random.nextInt(1, 600) / 2.0 : 0);
  }

  private static Cycle bout(SplittableRandom random) {
    if (random.nextBoolean()) {
      return Cycle.ofLength(Duration.ofMillis(random.nextInt(5, 600) * 100L));
    }
    int count = random.nextInt(1, 30);
    return random.nextBoolean()
        ? Cycle.ofInversions(count, Cycle.PACE)
        : new Cycle(count, Duration.ofMillis(random.nextInt(5, 600) * 100L), true);
  }
}
