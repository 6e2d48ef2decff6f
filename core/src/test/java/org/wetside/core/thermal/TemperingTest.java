package org.wetside.core.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;

class TemperingTest {
  private static Temperature c(double celsius) {
    return Temperature.ofCelsius(celsius);
  }

  private static Volume ml(double millilitres) {
    return Volume.ofMillilitres(millilitres);
  }

  private static WaterAtHand water(String name, double celsius) {
    return new WaterAtHand(name, c(celsius));
  }

  /** Row CK16 (CH-S99): 1000 mL at 20 °C from 15 and 50 °C, mass balance with Kell densities. */
  @Test
  void mixesColdAndHotByMass() {
    Tempering answer =
        TemperingQuestion.ofWater(c(20), ml(1000), List.of(water("cold", 15), water("hot", 50)))
            .answer();
    assertThat(answer).isInstanceOf(Tempering.Reached.class);
    Tempering.Reached reached = (Tempering.Reached) answer;
    assertThat(reached.of("hot").millilitres()).isCloseTo(144.33, within(0.05));
    assertThat(reached.of("cold").millilitres()).isCloseTo(856.37, within(0.05));
    assertThat(reached.pour().get(0).name()).as("cold first").isEqualTo("cold");
    assertThat(reached.scalds()).as("50 °C itself is the limit").isFalse();
  }

  /**
   * Rows CK17, CK18, CK19 (CH-S99): the water that brings stock of another temperature to 20 °C, in
   * 500 mL of working solution.
   */
  @ParameterizedTest(name = "{0}: {1} mL stock at {2} °C want water of {3} °C")
  @CsvSource({
    "CK17, 250, 18, 22.00, 0.01",
    "CK18, 125, 16, 21.335, 0.005",
    "CK19, 250, 26, 14.015, 0.005"
  })
  void countsStockIn(String row, double stockMl, double stockC, double waterC, double tolerance) {
    TemperingQuestion question =
        new TemperingQuestion(
            c(20),
            ml(500),
            List.of(new Liquid("stock", ml(stockMl), c(stockC))),
            List.of(water("cold", 5), water("hot", 50)),
            Optional.empty());
    assertThat(question.answer().waterTemperature().celsius())
        .as(row)
        .isCloseTo(waterC, within(tolerance));
  }

  /** Row CK19, second half: no mix reaches it from a 17 °C tap. */
  @Test
  void saysWhenNoMixReachesIt() {
    TemperingQuestion question =
        new TemperingQuestion(
            c(20),
            ml(500),
            List.of(new Liquid("stock", ml(250), c(26))),
            List.of(water("tap", 17)),
            Optional.empty());
    Tempering answer = question.answer();
    assertThat(answer).isInstanceOf(Tempering.CannotBeReached.class);
    double nearest = ((Tempering.CannotBeReached) answer).nearest().celsius();
    assertThat(nearest).isBetween(21.4, 21.6);
  }

  @Test
  void theNearestOfPlainWatersIsTheWaterItself() {
    Tempering answer =
        TemperingQuestion.ofWater(c(14), ml(1000), List.of(water("cold", 17), water("hot", 50)))
            .answer();
    assertThat(answer).isInstanceOf(Tempering.CannotBeReached.class);
    Tempering.CannotBeReached none = (Tempering.CannotBeReached) answer;
    assertThat(none.nearest()).isEqualTo(c(17));
    assertThat(none.nearestPour()).hasSize(1);
    assertThat(none.nearestPour().get(0).volume().millilitres()).isCloseTo(1000, within(1e-6));
  }

  @Test
  void takesTheIceBoxOnlyWhenTheTapDoesNotReach() {
    List<WaterAtHand> waters = List.of(water("cold", 17), water("hot", 50), water("ice-box", 4));
    Tempering.Reached warm =
        (Tempering.Reached) TemperingQuestion.ofWater(c(20), ml(600), waters).answer();
    Tempering.Reached cool =
        (Tempering.Reached) TemperingQuestion.ofWater(c(14), ml(600), waters).answer();
    assertThat(warm.of("ice-box")).isEqualTo(Volume.ZERO);
    assertThat(cool.of("ice-box").millilitres()).isPositive();
    assertThat(cool.of("hot")).isEqualTo(Volume.ZERO);
  }

  @Test
  void aColdVesselWantsWarmerWater() {
    TemperingQuestion question =
        new TemperingQuestion(
            c(20),
            ml(500),
            List.of(),
            List.of(water("cold", 15), water("hot", 50)),
            Optional.of(new Vessel(150, c(10))));
    // 150 J/K over 10 K = 1500 J, into 499.1 g at 4.18 J/(g·K): 0.72 K warmer, by hand.
    assertThat(question.answer().waterTemperature().celsius()).isCloseTo(20.72, within(0.01));
  }

  @Test
  void hotWaterAboveFiftyScalds() {
    Tempering kettle =
        TemperingQuestion.ofWater(c(38), ml(500), List.of(water("tap", 9), water("kettle", 95)))
            .answer();
    assertThat(kettle.scalds()).isTrue();
  }

  @Test
  void refusesStockThatLeavesNoRoom() {
    assertThatThrownBy(
            () ->
                new TemperingQuestion(
                    c(20),
                    ml(500),
                    List.of(new Liquid("stock", ml(600), c(18))),
                    List.of(water("tap", 15)),
                    Optional.empty()))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("600 mL")
        .hasMessageContaining("500 mL");
  }

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  /** Whatever is asked, mass and heat balance, nothing negative, the nearest lies at an end. */
  @ParameterizedTest
  @MethodSource("seeds")
  void massAndHeatBalance(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double cold = random.nextDouble(1, 25);
    double hot = random.nextDouble(cold + 1, 95);
    double stockC = random.nextDouble(5, 35);
    double stockMl = random.nextDouble(1, 400);
    double target = random.nextDouble(10, 45);
    TemperingQuestion question =
        new TemperingQuestion(
            c(target),
            ml(500),
            List.of(new Liquid("stock", ml(stockMl), c(stockC))),
            List.of(water("cold", cold), water("hot", hot)),
            Optional.empty());
    Tempering answer = question.answer();
    List<Liquid> pour;
    double reached;
    if (answer instanceof Tempering.Reached yes) {
      pour = yes.pour();
      reached = target;
    } else {
      pour = ((Tempering.CannotBeReached) answer).nearestPour();
      reached = ((Tempering.CannotBeReached) answer).nearest().celsius();
    }
    double grams = WaterDensity.grams(stockMl, c(stockC));
    double heat = grams * stockC;
    for (Liquid part : pour) {
      assertThat(part.volume().millilitres()).isNotNegative();
      grams += part.grams();
      heat += part.grams() * part.temperature().celsius();
    }
    assertThat(grams).isCloseTo(WaterDensity.grams(500, c(reached)), within(1e-6));
    assertThat(heat / grams).isCloseTo(reached, within(1e-6));
  }
}
