package org.wetside.core.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureRange;

class DriftTest {
  private static final Drift TOWARDS_26 = new Drift(c(26), Duration.ofMinutes(60));

  private static Temperature c(double celsius) {
    return Temperature.ofCelsius(celsius);
  }

  private static TimedReading at(double minutes, double celsius) {
    return new TimedReading(Duration.ofMillis(Math.round(minutes * 60_000)), c(celsius));
  }

  /** Row CK20 (CH-S99): from 20 °C in 26 °C surroundings, τ 60 min, after 10 min. */
  @Test
  void followsTheExponential() {
    assertThat(TOWARDS_26.after(c(20), Duration.ofMinutes(10)).celsius())
        .isCloseTo(20.921, within(0.001));
  }

  @Test
  void theMeanIsTheIntegralOverTheStretch() {
    double sum = 0;
    int steps = 100_000;
    for (int i = 0; i < steps; i++) {
      double minutes = 5 + 20 * (i + 0.5) / steps;
      sum += 26 - 6 * Math.exp(-minutes / 60);
    }
    assertThat(TOWARDS_26.mean(c(20), Duration.ofMinutes(5), Duration.ofMinutes(25)).celsius())
        .isCloseTo(sum / steps, within(1e-7));
  }

  @Test
  void entersAndLeavesTheBand() {
    TimeInBand answer = TOWARDS_26.timeIn(new TemperatureRange(c(21), c(22)), c(20));
    assertThat(answer).isInstanceOf(TimeInBand.Inside.class);
    TimeInBand.Inside inside = (TimeInBand.Inside) answer;
    // 60·ln(6/5) and 60·ln(6/4) minutes
    assertThat(inside.from().toMillis() / 60000.0).isCloseTo(10.9393, within(0.001));
    assertThat(inside.until().orElseThrow().toMillis() / 60000.0).isCloseTo(24.3279, within(0.001));
  }

  @Test
  void aBathInItsBandThatTheRoomDoesNotMoveOutStays() {
    TimeInBand.Inside inside =
        (TimeInBand.Inside) TOWARDS_26.timeIn(new TemperatureRange(c(25), c(27)), c(25.5));
    assertThat(inside.from()).isZero();
    assertThat(inside.until()).isEmpty();
  }

  @Test
  void aColdRoomNeverWarmsABath() {
    TimeInBand.Never never =
        (TimeInBand.Never)
            new Drift(c(15), Duration.ofMinutes(60))
                .timeIn(new TemperatureRange(c(19.5), c(20.5)), c(18));
    assertThat(never.nearest()).isEqualTo(c(18));
  }

  /** Two readings and the room: τ = Δt / ln((T1−Ta)/(T2−Ta)), closed form. */
  @Test
  void twoReadingsAndTheRoomGiveTheTimeConstant() {
    DriftFit.Found found =
        (DriftFit.Found) DriftFit.withRoom(List.of(at(0, 20), at(10, 19)), c(15));
    assertThat(found.drift().timeConstant().toMillis() / 60000.0)
        .isCloseTo(10 / Math.log(5.0 / 4.0), within(1e-4));
    assertThat(found.roomFitted()).isFalse();
    assertThat(found.start().celsius()).isCloseTo(20, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
  void exactReadingsGiveBackRoomAndTimeConstant(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double room = random.nextDouble(10, 28);
    double tau = random.nextDouble(20, 120);
    double start = room + (random.nextBoolean() ? 1 : -1) * random.nextDouble(3, 20);
    List<TimedReading> readings = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      double minutes = i * tau / 4;
      readings.add(at(minutes, room + (start - room) * Math.exp(-minutes / tau)));
    }
    DriftFit.Found free = (DriftFit.Found) DriftFit.findingRoom(readings);
    assertThat(free.drift().timeConstant().toMillis() / 60000.0).isCloseTo(tau, within(1e-3 * tau));
    assertThat(free.drift().surroundings().celsius()).isCloseTo(room, within(1e-3));
    assertThat(free.roomFitted()).isTrue();
    DriftFit.Found known = (DriftFit.Found) DriftFit.withRoom(readings, c(room));
    assertThat(known.drift().timeConstant().toMillis() / 60000.0)
        .isCloseTo(tau, within(1e-3 * tau));
    assertThat(known.residual().kelvins()).isCloseTo(0, within(1e-4));
  }

  @Test
  void saysWhyReadingsDetermineNothing() {
    assertThat(DriftFit.withRoom(List.of(at(0, 20), at(10, 21)), c(15)))
        .isInstanceOf(DriftFit.NotDeterminable.class);
    assertThat(DriftFit.withRoom(List.of(at(0, 20), at(10, 14)), c(15)))
        .isInstanceOf(DriftFit.NotDeterminable.class);
    assertThat(DriftFit.findingRoom(List.of(at(0, 20), at(10, 20), at(20, 20))))
        .isInstanceOf(DriftFit.NotDeterminable.class);
    assertThat(DriftFit.findingRoom(List.of(at(0, 20), at(10, 19), at(20, 18))))
        .as("a straight line has no room")
        .isInstanceOf(DriftFit.NotDeterminable.class);
  }

  @Test
  void refusesTooFewReadingsAndTwoAtOneMoment() {
    assertThatThrownBy(() -> DriftFit.withRoom(List.of(at(0, 20)), c(15)))
        .isInstanceOf(BadValueException.class);
    assertThatThrownBy(() -> DriftFit.findingRoom(List.of(at(0, 20), at(5, 19))))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("3");
    assertThatThrownBy(() -> DriftFit.withRoom(List.of(at(0, 20), at(0, 19)), c(15)))
        .isInstanceOf(BadValueException.class);
  }
}
