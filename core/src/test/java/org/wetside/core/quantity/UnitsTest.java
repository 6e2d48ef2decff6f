package org.wetside.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.wetside.core.quantity.Units.Measure;
import org.wetside.core.quantity.Units.Scale;

/** Words in the units a person reads, and numbers typed in them. */
class UnitsTest {
  private static final Units AMERICAN = new Units(Scale.FAHRENHEIT, Measure.US_FLUID_OUNCES);

  @Test
  void temperaturesAreReadToATenth() {
    assertThat(Units.METRIC.words(Temperature.ofCelsius(20))).isEqualTo("20 °C");
    assertThat(AMERICAN.words(Temperature.ofCelsius(20))).isEqualTo("68 °F");
    assertThat(Units.METRIC.words(Temperature.ofFahrenheit(70))).isEqualTo("21.1 °C");
    assertThat(Units.METRIC.words(Temperature.ofCelsius(-0.04))).isEqualTo("0 °C");
    assertThat(Units.METRIC.words(Temperature.ofCelsius(100))).isEqualTo("100 °C");
  }

  @Test
  void aBandSaysItsUnitOnceAndReadsBack() {
    TemperatureRange band = TemperatureRange.parse("18.3 to 23.9 C");
    assertThat(Units.METRIC.words(band)).isEqualTo("18.3 to 23.9 °C");
    assertThat(AMERICAN.words(band)).isEqualTo("64.9 to 75 °F");
    assertThat(TemperatureRange.parse(AMERICAN.words(band)).low().celsius())
        .isEqualTo(18.3, within(0.03));
    TemperatureRange narrow = TemperatureRange.parse("37.65 to 37.95 C");
    assertThat(Units.METRIC.words(narrow)).isEqualTo("37.65 to 37.95 °C");
    assertThat(AMERICAN.words(narrow)).isEqualTo("99.77 to 100.31 °F");
  }

  @Test
  void volumesAreReadAsFineAsAMeasureShowsThem() {
    assertThat(Units.METRIC.words(Volume.ofMillilitres(31.25))).isEqualTo("31.3 mL");
    assertThat(Units.METRIC.words(Volume.ofMillilitres(8))).isEqualTo("8 mL");
    assertThat(Units.METRIC.words(Volume.ofMillilitres(144.33))).isEqualTo("144 mL");
    assertThat(AMERICAN.words(Volume.ofUsFluidOunces(20))).isEqualTo("20 fl oz");
    assertThat(AMERICAN.words(Volume.ofMillilitres(8))).isEqualTo("0.27 fl oz");
    assertThat(AMERICAN.number(Volume.ofUsFluidOunces(8.25))).isEqualTo("8.25");
  }

  @Test
  void aBareNumberIsInTheChosenUnitAndAWrittenUnitWins() {
    assertThat(AMERICAN.temperature("68").celsius()).isEqualTo(20, within(1e-9));
    assertThat(AMERICAN.temperature(" 20 C").celsius()).isEqualTo(20);
    assertThat(Units.METRIC.temperature("-1.5").celsius()).isEqualTo(-1.5);
    assertThat(AMERICAN.volume("20")).isEqualTo(Volume.ofUsFluidOunces(20));
    assertThat(AMERICAN.volume("600mL")).isEqualTo(Volume.ofMillilitres(600));
    assertThatThrownBy(() -> AMERICAN.volume("20 cups"))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("20 cups");
  }

  @Test
  void whatIsReadCanBeTypedBackToWithinItsLastFigure() {
    Random random = new Random(20260118);
    for (int i = 0; i < 2_000; i++) {
      Temperature temperature = Temperature.ofCelsius(random.nextDouble(-5, 60));
      Volume volume = Volume.ofMillilitres(random.nextDouble(0.1, 3000));
      for (Units units : new Units[] {Units.METRIC, AMERICAN}) {
        assertThat(units.temperature(units.words(temperature)).celsius())
            .isEqualTo(temperature.celsius(), within(0.051));
        assertThat(units.volume(units.words(volume)).millilitres())
            .isEqualTo(volume.millilitres(), within(1.5));
      }
    }
  }
}
