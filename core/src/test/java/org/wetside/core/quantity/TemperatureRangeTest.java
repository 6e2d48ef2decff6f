package org.wetside.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A band of temperatures as it is typed. */
class TemperatureRangeTest {
  @ParameterizedTest
  @CsvSource({
    "18.3 to 23.9 °C, 18.3, 23.9",
    "18.3C to 23.9C, 18.3, 23.9",
    "65 to 75F, 18.333, 23.889",
    "65F to 75 °F, 18.333, 23.889",
    "20C ± 0.5, 19.5, 20.5",
    "20 ± 0.5 °C, 19.5, 20.5",
    "20 °C +/- 0.5, 19.5, 20.5",
    "68F ± 0.9, 19.5, 20.5",
    "68 ± 0.9F, 19.5, 20.5",
    "-5 to 0C, -5, 0"
  })
  void isReadAndReadBack(String typed, double low, double high) {
    TemperatureRange read = TemperatureRange.parse(typed);
    assertThat(read.low().celsius()).isCloseTo(low, within(0.001));
    assertThat(read.high().celsius()).isCloseTo(high, within(0.001));
    assertThat(TemperatureRange.parse(read.toString())).isEqualTo(read);
  }

  @ParameterizedTest
  @CsvSource({
    "20C, from and to",
    "warm, from and to",
    "18 to 24, unit",
    "24 to 18C, must not be above",
    "18 to warm, number and its unit",
    "20 ± x C, number and its unit"
  })
  void whatIsNoBandIsRefused(String typed, String says) {
    assertThatThrownBy(() -> TemperatureRange.parse(typed))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining(says);
  }
}
