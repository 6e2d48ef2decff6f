package org.wetside.core.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureDifference;

class ThermometerTest {
  private static final LocalDate FOUND = LocalDate.of(2026, 1, 10);

  private static ThermometerOffset found(double shown, double truth) {
    return ThermometerOffset.fromComparison(
        Temperature.ofCelsius(shown),
        Temperature.ofCelsius(truth),
        TemperatureDifference.ofKelvins(0.1),
        FOUND,
        "comparison");
  }

  @Test
  void keepsTheRawReadingBesideTheCorrectedOne() {
    Thermometer glass = new Thermometer("glass", Optional.of(found(0.4, 0)));
    Reading reading = glass.read(Temperature.ofCelsius(20.4));
    assertThat(reading.raw()).isEqualTo(Temperature.ofCelsius(20.4));
    assertThat(reading.corrected().celsius()).isCloseTo(20.0, within(1e-12));
  }

  @Test
  void isLessSureAwayFromWhereItWasCompared() {
    Thermometer ice = new Thermometer("ice", Optional.of(found(0.4, 0)));
    Thermometer twenty = new Thermometer("at 20", Optional.of(found(20.4, 20)));
    assertThat(ice.read(Temperature.ofCelsius(20.4)).uncertainty().kelvins())
        .isCloseTo(0.4, within(1e-12));
    assertThat(twenty.read(Temperature.ofCelsius(21)).uncertainty().kelvins())
        .isCloseTo(0.1, within(1e-12));
  }

  @Test
  void anUncheckedThermometerIsNotCorrected() {
    Reading reading = Thermometer.unchecked("new").read(Temperature.ofCelsius(20));
    assertThat(reading.corrected()).isEqualTo(reading.raw());
    assertThat(reading.uncertainty()).isEqualTo(Thermometer.UNCHECKED);
  }

  @Test
  void refusesAnOffsetThatIsAnotherThermometer() {
    assertThatThrownBy(() -> found(68, 20))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("-48 K")
        .hasMessageContaining("±10 K");
  }
}
