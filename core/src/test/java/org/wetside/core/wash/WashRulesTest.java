package org.wetside.core.wash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Concentration;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

class WashRulesTest {
  private static final Volume FILL = Volume.ofMillilitres(500);
  private static final Volume CARRIED = Volume.ofMillilitres(10);

  /** Row CK26 (CH-S30): the part left after one, two and three fills. */
  @Test
  void eachFillLeavesTheSamePart() {
    double left = EquilibriumRule.left(CARRIED, FILL);
    assertThat(left).isCloseTo(1.961e-2, within(1e-5));
    assertThat(left * left).isCloseTo(3.845e-4, within(1e-7));
    assertThat(left * left * left).isCloseTo(7.539e-6, within(1e-9));
  }

  /** Row CK27 (CH-S30): from 60 g/L, after one, two and three fills, in mg/L. */
  @Test
  void fillsThinTheFixer() {
    List<Concentration> after =
        EquilibriumRule.afterEach(
            Concentration.ofGramsPerLitre(60), CARRIED, Collections.nCopies(3, FILL));
    assertThat(after.get(0).gramsPerLitre() * 1000).isCloseTo(1176.471, within(0.001));
    assertThat(after.get(1).gramsPerLitre() * 1000).isCloseTo(23.068, within(0.001));
    assertThat(after.get(2).gramsPerLitre() * 1000).isCloseTo(0.452, within(0.001));
  }

  /** Row CK29 (CH-S30): rinsed first, so that only what is absorbed goes into the fill. */
  @Test
  void rinsedFilmBringsOnlyWhatItAbsorbed() {
    Concentration after =
        EquilibriumRule.afterEach(
                Concentration.ofGramsPerLitre(60), Volume.ofMillilitres(2), List.of(FILL))
            .get(0);
    assertThat(after.gramsPerLitre() * 1000).isCloseTo(239.0, within(0.5));
  }

  /** Row CK30 (CH-S03): half-time 60 s, 20 min. */
  @Test
  void twentyMinutesAreTwentyHalfTimesOfTheNavy() {
    assertThat(HalfTimeRule.left(Duration.ofMinutes(20), Duration.ofSeconds(60)))
        .isCloseTo(9.537e-7, within(1e-9));
  }

  /** Row CK31 (CH-S07): half-time 15 s, 5 min. */
  @Test
  void fiveMinutesAreTwentyHalfTimesOfTheArmy() {
    assertThat(HalfTimeRule.left(Duration.ofMinutes(5), Duration.ofSeconds(15)))
        .isCloseTo(9.537e-7, within(1e-9));
  }

  /** The published points themselves (RL30, RL31 of DV-S15), and a straight logarithm between. */
  @Test
  void coldWaterTakesLonger() {
    ColdWater cold =
        new ColdWater(
            List.of(
                new ColdWater.Point(Temperature.ofCelsius(20), 1),
                new ColdWater.Point(Temperature.ofCelsius(10), 2),
                new ColdWater.Point(Temperature.ofFahrenheit(35), 4)));
    assertThat(cold.times(Temperature.ofCelsius(10))).isCloseTo(2, within(1e-12));
    assertThat(cold.times(Temperature.ofFahrenheit(35))).isCloseTo(4, within(1e-12));
    assertThat(cold.times(Temperature.ofCelsius(15))).isCloseTo(Math.sqrt(2), within(1e-12));
    assertThat(cold.times(Temperature.ofCelsius(20))).isEqualTo(1);
    assertThat(cold.times(Temperature.ofCelsius(30))).isEqualTo(1);
    HalfTime navy = new HalfTime(Duration.ofSeconds(60), Citation.of("CH-S03"), Standing.PUBLISHED);
    assertThat(cold.lengthened(navy, Temperature.ofCelsius(10))).isEqualTo(Duration.ofMinutes(2));
    assertThatThrownBy(() -> cold.times(Temperature.ofCelsius(1)))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("between 1.7 and 40 °C");
    assertThatThrownBy(() -> cold.times(Temperature.ofCelsius(41)))
        .hasMessageContaining("temperature of the wash water");
  }
}
