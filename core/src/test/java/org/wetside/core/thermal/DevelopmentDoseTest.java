package org.wetside.core.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.hipparchus.analysis.integration.RombergIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.source.Standing;

class DevelopmentDoseTest {
  private static final double CLOSE_S = 0.1;

  @Test
  void atTheReferenceTheDoseIsTheTime() {
    DevelopmentDose dose = dose(0.08, List.of(reading(0, 20)), Optional.empty());
    assertThat(dose.reached(Duration.ofSeconds(333))).isEqualTo(Duration.ofSeconds(333));
    assertThat(dose.completeAfter(Duration.ofMinutes(9))).isEqualTo(Duration.ofMinutes(9));
  }

  /** By hand: a bath one kelvin too cold works e^(−0.08) as fast and takes e^0.08 as long. */
  @Test
  void aColdBathTakesLonger() {
    DevelopmentDose dose = dose(0.08, List.of(reading(0, 19)), Optional.empty());
    assertThat(seconds(dose.completeAfter(Duration.ofSeconds(540))))
        .isCloseTo(540 * Math.exp(0.08), within(1e-6));
  }

  @Test
  void outsideTheSpanNothingIsReckoned() {
    DevelopmentDose dose = dose(0.08, List.of(reading(0, 30), reading(100, 30)), Optional.empty());
    assertThat(dose.reached(Duration.ofSeconds(100))).isEqualTo(Duration.ofSeconds(100));
    assertThat(dose.notKnown(Duration.ofSeconds(100))).isEqualTo(Duration.ofSeconds(100));
    DevelopmentDose leaving =
        dose(0.08, List.of(reading(0, 22), reading(400, 26)), Optional.empty());
    assertThat(seconds(leaving.notKnown(Duration.ofSeconds(400))))
        .as("above 24 °C from 200 s on")
        .isCloseTo(200, within(1e-6));
  }

  /** Two hundred random histories of readings for each seed: 1,000 in all. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void itAgreesWithAQuadratureOfALibrary(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int history = 0; history < 200; history++) {
      double beta = 0.03 + 0.12 * random.nextDouble();
      List<TimedReading> readings = new ArrayList<>();
      double at = 0;
      for (int i = 0; i < 1 + random.nextInt(8); i++) {
        readings.add(reading(at, 16.5 + 9 * random.nextDouble()));
        at += 5 + 900 * random.nextDouble();
      }
      Optional<Drift> drift =
          random.nextBoolean()
              ? Optional.empty()
              : Optional.of(
                  new Drift(
                      Temperature.ofCelsius(5 + 25 * random.nextDouble()),
                      TimeSpan.ofSeconds(60 + 6000 * random.nextDouble())));
      DevelopmentDose dose = dose(beta, readings, drift);
      double until = 60 + 7140 * random.nextDouble();
      double reached = seconds(dose.reached(TimeSpan.ofSeconds(until)));
      assertThat(reached).isCloseTo(quadrature(dose, readings, until), within(CLOSE_S));
      assertThat(seconds(dose.completeAfter(TimeSpan.ofSeconds(reached))))
          .as("solving for the end leads back")
          .isCloseTo(until, within(1e-4));
      assertThat(seconds(dose.reached(TimeSpan.ofSeconds(until + 1)))).isGreaterThan(reached);
    }
  }

  /** Romberg's rule over the curve itself, minute by minute, parted at the readings. */
  private static double quadrature(
      DevelopmentDose dose, List<TimedReading> readings, double until) {
    List<Double> cuts = new ArrayList<>();
    for (double cut = 0; cut < until; cut += 20) {
      cuts.add(cut);
    }
    readings.forEach(one -> cuts.add(seconds(one.elapsed())));
    cuts.add(until);
    List<Double> ordered = cuts.stream().filter(cut -> cut <= until).sorted().toList();
    double sum = 0;
    for (int i = 1; i < ordered.size(); i++) {
      if (ordered.get(i) - ordered.get(i - 1) > 1e-9) {
        sum += piece(dose, ordered.get(i - 1), ordered.get(i));
      }
    }
    return sum;
  }

  private static double piece(DevelopmentDose dose, double from, double to) {
    double beta = dose.rate().betaPerKelvin();
    double[] edges = {18, 24};
    for (double edge : edges) {
      double below = dose.curve().at(from).celsius() - edge;
      double above = dose.curve().at(to).celsius() - edge;
      if (below * above < 0) {
        double middle = (from + to) / 2;
        if (to - from < 1e-3) {
          return to - from; // too short to matter, whichever side it is on
        }
        return piece(dose, from, middle) + piece(dose, middle, to);
      }
    }
    return new RombergIntegrator(1e-8, 1e-8, 2, 20)
        .integrate(
            100_000,
            second -> {
              double celsius = dose.curve().at(second).celsius();
              return celsius < 18 || celsius > 24 ? 1 : Math.exp(beta * (celsius - 20));
            },
            from,
            to);
  }

  private static DevelopmentDose dose(
      double beta, List<TimedReading> readings, Optional<Drift> drift) {
    DevelopmentRate rate =
        new DevelopmentRate(
            beta,
            Temperature.ofCelsius(20),
            new TemperatureRange(Temperature.ofCelsius(18), Temperature.ofCelsius(24)),
            Standing.COMPUTED,
            "a test");
    return new DevelopmentDose(rate, new BathCurve(readings, drift));
  }

  private static TimedReading reading(double seconds, double celsius) {
    return new TimedReading(TimeSpan.ofSeconds(seconds), Temperature.ofCelsius(celsius));
  }

  private static double seconds(Duration time) {
    return TimeSpan.toSeconds(time);
  }
}
