package org.wetside.core.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureDifference;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.Volume;

class BathsTemperingTest {
  private static final Volume FILL = Volume.ofMillilitres(600);
  private static final List<WaterAtHand> WINTER =
      List.of(new WaterAtHand("cold", c(9)), new WaterAtHand("hot", c(55)));

  private static Temperature c(double celsius) {
    return Temperature.ofCelsius(celsius);
  }

  private static BathWanted bath(String name, double half, int minutes, BathWanted.Making made) {
    return new BathWanted(
        name,
        1,
        FILL,
        c(20),
        TemperatureRange.around(c(20), TemperatureDifference.ofKelvins(half)),
        Duration.ofMinutes(minutes),
        made);
  }

  private static BathWanted.FromWater water(double concentrateMl) {
    return new BathWanted.FromWater(Volume.ofMillilitres(concentrateMl), c(15));
  }

  @Test
  void bottlesComeFirstAndWhatDriftsSoonestIsMadeLast() {
    List<BathTempered> order =
        new BathsTempering(WINTER, c(15), Optional.empty())
            .of(
                List.of(
                    bath("developer", 0.5, 0, water(150)),
                    bath("stop", 3, 10, water(0)),
                    bath("fixer", 3, 11, new BathWanted.InBottle(c(15)))));
    assertThat(order)
        .extracting(one -> one.bath().name())
        .containsExactly("fixer", "stop", "developer");
    assertThat(order.get(0).way()).isEqualTo(BathTempered.Way.STAND_IN_WATER);
    assertThat(order.get(0).water()).isEqualTo(Volume.ofMillilitres(1200));
    assertThat(order).allSatisfy(one -> assertThat(one.atPour()).isEmpty());
  }

  /** The mixture has its target: mass and heat add up, with Kell's densities, for random rooms. */
  @Test
  void massAndHeatAddUp() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 200; i++) {
      Temperature room = c(5 + 12 * random.nextDouble());
      double concentrate = 300 * random.nextDouble();
      BathWanted developer =
          bath(
              "developer",
              0.1,
              0,
              new BathWanted.FromWater(Volume.ofMillilitres(concentrate), room));
      BathTempered one =
          new BathsTempering(WINTER, room, Optional.empty()).of(List.of(developer)).get(0);
      Tempering.Reached reached = (Tempering.Reached) one.waters();
      double grams = new Liquid("stock", Volume.ofMillilitres(concentrate), room).grams();
      double heat = grams * room.celsius();
      for (Liquid pour : reached.pour()) {
        grams += pour.grams();
        heat += pour.grams() * pour.temperature().celsius();
      }
      assertThat(heat / grams).isCloseTo(20, within(1e-9));
      assertThat(WaterDensity.volumeOf(grams, c(20)).millilitres()).isCloseTo(600, within(1e-6));
    }
  }

  /** A bottle of 600 mL at 15 °C in 1200 mL of water at 22.5 °C: both meet at 20 °C. */
  @Test
  void aBottleMeetsItsWaterAtTheTarget() {
    BathTempered fixer =
        new BathsTempering(WINTER, c(15), Optional.empty())
            .of(List.of(bath("fixer", 1, 11, new BathWanted.InBottle(c(15)))))
            .get(0);
    assertThat(fixer.waters().waterTemperature().celsius()).isCloseTo(22.5, within(1e-9));
    double meets = (600 * 15 + 1200 * fixer.waters().waterTemperature().celsius()) / 1800;
    assertThat(meets).isCloseTo(20, within(1e-9));
  }

  /** Row CK20 (CH-S99): from 20 °C in 26 °C surroundings, τ 60 min, after 10 min 20.921 °C. */
  @Test
  void theDriftModelForecastsTheMomentOfThePour() {
    BathTempered stop =
        new BathsTempering(WINTER, c(26), Optional.of(Duration.ofMinutes(60)))
            .of(List.of(bath("stop", 3, 10, water(0))))
            .get(0);
    assertThat(stop.atPour().orElseThrow().celsius()).isCloseTo(20.921, within(0.001));
    assertThat(stop.keeps() * 60).isCloseTo(60 * Math.log(6.0 / 3.0), within(1e-4));
    TimeInBand.Inside wait = (TimeInBand.Inside) stop.byItself().orElseThrow();
    // from 9 °C to 17 °C in a room of 26 °C: 60·ln(17/9) min
    assertThat(wait.from().toMillis() / 60_000.0)
        .isCloseTo(60 * Math.log(17.0 / 9.0), within(1e-3));
  }

  @Test
  void whatIsInItsBandAsItComesIsLeftAlone() {
    BathTempered wash =
        new BathsTempering(List.of(new WaterAtHand("cold", c(19))), c(20), Optional.empty())
            .of(List.of(bath("wash", 3, 20, water(0))))
            .get(0);
    assertThat(wash.way()).isEqualTo(BathTempered.Way.AS_IT_COMES);
    assertThat(((Tempering.Reached) wash.waters()).pour()).hasSize(1);
    assertThat(wash.keeps()).isInfinite();
  }

  @Test
  void withoutWaterNothingCanBeTempered() {
    assertThatThrownBy(() -> new BathsTempering(List.of(), c(20), Optional.empty()))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("waters at hand");
    assertThatThrownBy(() -> new BathsTempering(WINTER, c(20), Optional.of(Duration.ZERO)))
        .hasMessageContaining("time constant");
    assertThatThrownBy(() -> new Water("tap", c(101), Water.Hardness.SOFT))
        .hasMessageContaining("between 0 and 100 °C");
    assertThatThrownBy(() -> Water.Hardness.fromWord("chalky")).hasMessageContaining("soft, hard");
  }
}
