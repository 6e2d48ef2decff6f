package org.wetside.core.testroll;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.wetside.core.quantity.BadValueException;

class ThreeTimesTest {
  @Test
  void aroundEightMinutes() {
    // 480 s / 1.4 = 342.9 s, nearest 15 s is 345 s; 480 s x 1.4 = 672 s, nearest is 675 s
    assertThat(ThreeTimes.around(Duration.ofSeconds(480)))
        .isEqualTo(
            new ThreeTimes(
                Duration.ofSeconds(345), Duration.ofSeconds(480), Duration.ofSeconds(675)));
  }

  @Test
  void aTimeTooShortIsRefusedWithItsLimit() {
    // 240 s / 1.4 = 171.4 s, nearest 15 s is 165 s
    assertThatThrownBy(() -> ThreeTimes.around(Duration.ofSeconds(240)))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("shortest time", "165 s", "180 s");
  }

  @Test
  void timesOutOfOrderAreRefused() {
    Duration five = Duration.ofMinutes(5);
    assertThatThrownBy(() -> new ThreeTimes(five, five, Duration.ofMinutes(7)))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("middle time", "300 s");
  }
}
