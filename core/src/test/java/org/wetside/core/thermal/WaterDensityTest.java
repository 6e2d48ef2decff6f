package org.wetside.core.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;

class WaterDensityTest {

  /** Rows CK08, CK09 (documented values of CH-S52), CK10 and the table baths/water_density. */
  @ParameterizedTest
  @CsvSource({
    "0, 999.8395",
    "4, 999.9720",
    "15, 999.0996",
    "20, 998.2041",
    "25, 997.0449",
    "38, 992.9653",
    "50, 988.0363",
    "60, 983.1989"
  })
  void agreesWithKell(double celsius, double kilograms) {
    assertThat(WaterDensity.kilogramsPerCubicMetre(Temperature.ofCelsius(celsius)))
        .isCloseTo(kilograms, within(0.001));
  }

  /**
   * The formula circulates with a wrong constant in its denominator (CH-S52: one common typing
   * error). Two digits exchanged there move the 25 °C value far outside the tolerance above.
   */
  @Test
  void isNotTheMistypedFormula() {
    double right = WaterDensity.kilogramsPerCubicMetre(Temperature.ofCelsius(25));
    double mistyped = right * (1 + 16.879850e-3 * 25) / (1 + 16.897850e-3 * 25);
    assertThat(Math.abs(mistyped - 997.0449)).isGreaterThan(0.1);
    assertThat(right).isCloseTo(997.0449, within(0.001));
  }

  @Test
  void refusesWhatIsNotLiquid() {
    assertThatThrownBy(() -> WaterDensity.kilogramsPerCubicMetre(Temperature.ofCelsius(-1)))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("-1 °C")
        .hasMessageContaining("0 °C and 100 °C");
    assertThatThrownBy(() -> WaterDensity.kilogramsPerCubicMetre(Temperature.ofCelsius(101)))
        .isInstanceOf(BadValueException.class);
  }
}
