package org.wetside.web.wash;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FigureTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "0.336, 0.34",
    "0.00834, 0.0083",
    "20, 20",
    "1.32e-10, 1.3·10⁻¹⁰",
    "71000000, 7.1·10⁷"
  })
  void twoDigitsAreRead(double value, String text) {
    assertThat(Figure.of(value)).isEqualTo(text);
  }
}
