package org.wetside.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for every quantity, whatever it measures. */
class EveryQuantityTest {
  private static final int TRIES = 2_000;

  /**
   * One quantity.
   *
   * @param name for messages
   * @param of from its canonical number
   * @param number back to it
   * @param parse reads what its text says; null where it is never typed
   * @param least the smallest value tried
   * @param most the largest
   */
  record Kind(
      String name,
      DoubleFunction<Object> of,
      ToDoubleFunction<Object> number,
      @Nullable Function<String, Object> parse,
      double least,
      double most) {
    @Override
    public String toString() {
      return name;
    }
  }

  static List<Kind> kinds() {
    return List.of(
        new Kind(
            "temperature",
            Temperature::ofCelsius,
            q -> ((Temperature) q).celsius(),
            Temperature::parse,
            -273.15,
            200),
        new Kind(
            "temperature difference",
            TemperatureDifference::ofKelvins,
            q -> ((TemperatureDifference) q).kelvins(),
            TemperatureDifference::parse,
            -100,
            100),
        new Kind(
            "volume",
            Volume::ofMillilitres,
            q -> ((Volume) q).millilitres(),
            Volume::parse,
            0,
            1e6),
        new Kind("mass", Mass::ofGrams, q -> ((Mass) q).grams(), Mass::parse, 0, 1e5),
        new Kind(
            "exposure index",
            ExposureIndex::of,
            q -> ((ExposureIndex) q).isoArithmetic(),
            ExposureIndex::parse,
            0.1,
            102_400),
        new Kind(
            "dilution",
            parts -> DilutionRatio.ofParts(1, parts),
            q -> ((DilutionRatio) q).waterParts(),
            DilutionRatio::parse,
            0,
            500),
        new Kind(
            "concentration",
            Concentration::ofGramsPerLitre,
            q -> ((Concentration) q).gramsPerLitre(),
            Concentration::parse,
            0,
            500),
        new Kind(
            "flow",
            FlowRate::ofLitresPerMinute,
            q -> ((FlowRate) q).litresPerMinute(),
            FlowRate::parse,
            0,
            50),
        new Kind(
            "mass on film",
            ArealMass::ofGramsPerSquareMetre,
            q -> ((ArealMass) q).gramsPerSquareMetre(),
            null,
            0,
            10),
        new Kind("density", OpticalDensity::of, q -> ((OpticalDensity) q).value(), null, -0.1, 6),
        new Kind(
            "log exposure",
            LogExposure::ofLog10LuxSeconds,
            q -> ((LogExposure) q).log10LuxSeconds(),
            null,
            -6,
            4),
        new Kind("stops", Stops::of, q -> ((Stops) q).count(), null, -10, 10),
        new Kind("contrast", Gradient::of, q -> ((Gradient) q).value(), null, 0, 3));
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void itsNumberAndItsTextComeBack(Kind kind) {
    Random random = new Random(26);
    for (int i = 0; i < TRIES; i++) {
      double value = kind.least() + random.nextDouble() * (kind.most() - kind.least());
      double rounded = Math.max(kind.least(), Math.round(value * 1000) / 1000.0);
      Object quantity = kind.of().apply(rounded);
      assertThat(kind.number().applyAsDouble(quantity)).isEqualTo(rounded);
      assertThat(kind.of().apply(rounded)).isEqualTo(quantity).hasSameHashCodeAs(quantity);
      Function<String, Object> parse = kind.parse();
      if (parse != null) {
        assertThat(parse.apply(quantity.toString())).isEqualTo(quantity);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void itIsNeverMinusZeroNorNoNumber(Kind kind) {
    if (kind.least() <= 0) {
      Object zero = kind.of().apply(-0.0);
      assertThat(1 / kind.number().applyAsDouble(zero)).isEqualTo(Double.POSITIVE_INFINITY);
      assertThat(zero).isEqualTo(kind.of().apply(0.0));
    }
    for (double no : new double[] {Double.NaN, 1 / 0.0, -1 / 0.0}) {
      assertThatThrownBy(() -> kind.of().apply(no)).isInstanceOf(BadValueException.class);
    }
  }

  @Test
  void anotherUnitIsTheSameQuantity() {
    Random random = new Random(1);
    for (int i = 0; i < TRIES; i++) {
      double fahrenheit = random.nextDouble() * 200 - 50;
      assertThat(Temperature.ofFahrenheit(fahrenheit).fahrenheit())
          .isCloseTo(fahrenheit, within(1e-9));
      double ounces = random.nextDouble() * 100;
      assertThat(Volume.ofUsFluidOunces(ounces).usFluidOunces()).isCloseTo(ounces, within(1e-9));
      assertThat(TemperatureDifference.ofFahrenheitDegrees(9).kelvins()).isEqualTo(5);
      Duration time = Duration.ofMillis(random.nextInt(10_000_000));
      assertThat(TimeSpan.ofSeconds(TimeSpan.toSeconds(time))).isEqualTo(time);
    }
  }

  /** Rows CK40 (CH-S11 prints a wrong value for the same conversion) and CK41 (CH-S07). */
  @Test
  void publishedConversionsHold() {
    assertThat(Temperature.ofFahrenheit(125).celsius()).isCloseTo(51.667, within(0.001));
    double share = Volume.ofUsFluidOunces(1.5).ratioTo(Volume.ofUsFluidOunces(32));
    assertThat(Volume.ofLitres(1).times(share).millilitres()).isCloseTo(46.9, within(0.1));
  }

  /** Rows CK23 (CH-S24, CH-S25) and CK24 (CH-S31). */
  @Test
  void limitsOfResidueAreTheSameInTheUnitsTheyArePrintedIn() {
    ArealMass limit = ArealMass.ofGramsPerSquareMetre(0.014);
    assertThat(limit.microgramsPerSquareCentimetre()).isCloseTo(1.4, within(1e-12));
    assertThat(limit.milligramsPerSquareInch()).isCloseTo(0.00903, within(0.0001));
    assertThat(ArealMass.ofMilligramsPerSquareInch(0.080).microgramsPerSquareCentimetre())
        .isCloseTo(12.40, within(0.01));
  }

  /** Row CK25 (CH-S24): what the limit allows on a strip of 35 × 1600 mm, one side. */
  @Test
  void theLimitAllowsThatMuchOnAStrip() {
    double strip = 3.5 * 160;
    assertThat(ArealMass.ofGramsPerSquareMetre(0.014).gramsOn(strip) * 1000)
        .isCloseTo(0.784, within(0.001));
  }

  /** A band is two temperatures in order; its text comes back, whatever the ends. */
  @Test
  void aBandOfTemperaturesComesBack() {
    Random random = new Random(3);
    for (int i = 0; i < TRIES; i++) {
      double low = Math.round(random.nextDouble() * 400) / 10.0;
      double high = low + Math.round(random.nextDouble() * 100) / 10.0;
      TemperatureRange band =
          new TemperatureRange(Temperature.ofCelsius(low), Temperature.ofCelsius(high));
      assertThat(TemperatureRange.parse(band.toString())).isEqualTo(band);
      assertThat(band.contains(band.low())).isTrue();
      assertThat(band.outsideBy(band.high()).kelvins()).isZero();
      if (high > low) {
        assertThatThrownBy(
                () -> new TemperatureRange(/* low= */ band.high(), /* high= */ band.low()))
            .isInstanceOf(BadValueException.class);
      }
    }
  }

  /** What comes out of a sum, a difference or a product is a number of the same kind. */
  @Test
  void arithmeticLeavesNoMinusZeroAndNoOverflowUnseen() {
    double zero = Volume.ofMillilitres(3).minus(Volume.ofMillilitres(3)).times(2).millilitres();
    assertThat(1 / zero).isPositive();
    double none = Temperature.ofCelsius(-5).minus(Temperature.ofCelsius(-5)).kelvins();
    assertThat(1 / none).isPositive();
    double mirrored = TemperatureDifference.ofKelvins(0).times(-1).kelvins();
    assertThat(1 / mirrored).isPositive();
    assertThatThrownBy(() -> Volume.ofMillilitres(1e300).times(1e300))
        .isInstanceOf(BadValueException.class);
  }

  /** A new quantity of this package joins the list above, or the few that hold no single number. */
  @Test
  void noQuantityIsForgotten() throws Exception {
    Set<String> tested = new TreeSet<>(Set.of("TemperatureRange", "Units", "Written"));
    for (Kind kind : kinds()) {
      tested.add(kind.of().apply(Math.max(1, kind.least())).getClass().getSimpleName());
    }
    Set<String> records = new TreeSet<>();
    Path classes = Path.of(Temperature.class.getResource("Temperature.class").toURI()).getParent();
    try (Stream<Path> files = Files.list(classes)) {
      for (Path file : files.toList()) {
        String name = file.getFileName().toString().replace(".class", "");
        if (!name.contains("$") && !name.equals("package-info")) {
          Class<?> type = Class.forName(Temperature.class.getPackageName() + "." + name);
          if (type.isRecord()) {
            records.add(name);
          }
        }
      }
    }
    assertThat(tested).isEqualTo(records);
  }

  @Test
  void pointsAndDifferencesFollowEachOther() {
    Random random = new Random(2);
    for (int i = 0; i < TRIES; i++) {
      Temperature one = Temperature.ofCelsius(random.nextInt(100));
      Temperature other = Temperature.ofCelsius(random.nextInt(100));
      assertThat(other.plus(one.minus(other))).isEqualTo(one);
      assertThat(Integer.signum(one.compareTo(other)))
          .isEqualTo((int) Math.signum(one.minus(other).kelvins()));
      ExposureIndex base = ExposureIndex.of(25 + random.nextInt(3000));
      ExposureIndex pushed = ExposureIndex.of(25 + random.nextInt(3000));
      assertThat(base.stopsTo(pushed).count())
          .isCloseTo(-pushed.stopsTo(base).count(), within(1e-9));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "temperature | 20     | say the unit",
        "temperature | 20,5C  | decimal mark as a point",
        "temperature | -300C  | at least -273.15 °C",
        "temperature | warm   | a number and its unit",
        "volume      | 600    | say the unit",
        "volume      | -1mL   | at least 0 mL",
        "volume      | 2gal   | mL, L or floz",
        "index       | 0      | more than 0",
        "index       | 999999 | at most 102400",
        "index       | 400C   | the number alone",
        "dilution    | 1:31   | is 1 part plus 31 of water meant (write 1+31), or 1 part in 31",
        "dilution    | one    | write it as parts",
        "time        | 9.45   | minutes and seconds",
        "time        | 9:75   | go to 59",
        "time        | -2min  | cannot be negative"
      })
  void aBadOneIsAnsweredWithTheValueAndTheLimit(String kind, String text, String limit) {
    Function<String, Object> parse =
        switch (kind) {
          case "temperature" -> Temperature::parse;
          case "volume" -> Volume::parse;
          case "index" -> ExposureIndex::parse;
          case "dilution" -> Dilution::parse;
          default -> typed -> TimeSpan.parse("time", typed);
        };
    assertThatThrownBy(() -> parse.apply(text))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining(text.replaceFirst("^(-\\d+)C$", "$1").replace("mL", ""))
        .hasMessageContaining(limit);
  }
}
