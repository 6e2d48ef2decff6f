package org.wetside.core.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The chart: standardised as it says, silent when nothing drifts, awake when something does. */
class ControlChartTest {
  private static final int USERS = 1_000;
  private static final double TRUTH = Math.log(1.10);

  /** A thermometer 3 K off, at 6.6 % per kelvin. */
  private static final double THREE_KELVINS = 3 * 0.066;

  @Test
  void residualsAreStandardisedByWhatWasKnownBefore() {
    Users users = new Users(11);
    double sum = 0;
    double squares = 0;
    int count = 0;
    for (int user = 0; user < USERS; user++) {
      double truth = users.normal(Math.hypot(0.10, 0.08));
      for (ChartPoint point :
          ControlChart.of(Users.SCATTER, users.rolls(truth, 6, 6, 0)).points()) {
        sum += point.residual();
        squares += point.residual() * point.residual();
        count++;
      }
    }
    // 6,000 draws of a standard normal: mean within 0.05, variance within 0.08, four of their sds
    assertThat(sum / count).isCloseTo(0, within(0.05));
    assertThat(squares / count).isCloseTo(1, within(0.08));
  }

  @Test
  void threeStandardDeviationsAreEnoughAtOnce() {
    List<RollSeen> rolls = quiet(5);
    rolls.add(Users.roll("A", 5, 0.40));
    List<ChartPoint> points = ControlChart.of(Users.SCATTER, rolls).points();

    assertThat(points.subList(0, 5)).noneMatch(ChartPoint::isFlagged);
    assertThat(points.get(5).drift()).isEqualTo(Drift.ONE_SLOW);
    assertThat(points.get(5).residual()).isGreaterThan(3);
  }

  @Test
  void twoOfThreeOnOneSideAreEnough() {
    List<RollSeen> rolls = quiet(5);
    rolls.add(Users.roll("A", 5, -0.10));
    rolls.add(Users.roll("A", 6, 0.05));
    rolls.add(Users.roll("A", 7, -0.10));
    List<ChartPoint> points = ControlChart.of(Users.SCATTER, rolls).points();

    assertThat(points.get(5).residual()).isBetween(-3.0, -2.0);
    assertThat(points.get(5).isFlagged()).isFalse();
    assertThat(points.get(6).isFlagged()).isFalse();
    assertThat(points.get(7).drift()).isEqualTo(Drift.TWO_FAST);
  }

  /** The flag stands at the roll that completes the pattern, not at a good one after it. */
  @Test
  void aGoodRollRaisesNothing() {
    List<RollSeen> rolls = quiet(5);
    rolls.add(Users.roll("A", 5, -0.10));
    rolls.add(Users.roll("A", 6, -0.12));
    rolls.add(Users.roll("A", 7, 0.05));
    List<ChartPoint> points = ControlChart.of(Users.SCATTER, rolls).points();

    assertThat(points.get(6).drift()).isEqualTo(Drift.TWO_FAST);
    assertThat(points.get(7).isFlagged()).isFalse();
  }

  @Test
  void oneOnEitherSideIsNothing() {
    List<RollSeen> rolls = quiet(6);
    rolls.add(Users.roll("A", 6, 0.22));
    rolls.add(Users.roll("A", 7, -0.08));

    assertThat(ControlChart.of(Users.SCATTER, rolls).isFlagged()).isFalse();
  }

  @Test
  void rollsStandInTheOrderOfTheirDevelopment() {
    List<RollSeen> rolls = new ArrayList<>(List.of(Users.roll("A", 3, 0), Users.roll("A", 1, 0)));

    assertThat(ControlChart.of(Users.SCATTER, rolls).points())
        .extracting(point -> point.roll().roll())
        .containsExactly("A-1", "A-3");
  }

  /** A drift shows on the next film too: what films have in common was learned from all. */
  @Test
  void aDriftIsSeenAcrossFilms() {
    List<RollSeen> rolls = quiet(8);
    for (int i = 8; i < 14; i++) {
      rolls.add(Users.roll("B", i, 0.10));
    }
    rolls.add(Users.roll("A", 14, 0.30));
    rolls.add(Users.roll("B", 15, 0.30));

    assertThat(ControlChart.of(Users.SCATTER, rolls).points().get(15).drift().isSlow()).isTrue();
  }

  @Test
  void aThermometerThreeKelvinsOffRaisesTheFlagWithinThreeRolls() {
    for (double shift : new double[] {THREE_KELVINS, -THREE_KELVINS}) {
      double few = flagged(USERS, 31, 8, 5, shift, 5);
      double many = flagged(20 * USERS, 32, 8, 5, shift, 5);
      System.out.printf(
          "learning: 3 K off (%+.3f) flagged within three rolls: %.1f %% of 1,000, %.1f %% of"
              + " 20,000%n",
          shift, 100 * few, 100 * many);

      assertThat(few).isGreaterThanOrEqualTo(0.90);
      assertThat(many).isGreaterThanOrEqualTo(0.90);
    }
  }

  @Test
  void tenRollsWithoutADriftSeldomRaiseTheFlag() {
    double few = flagged(USERS, 41, 10, 10, 0, 0);
    double many = flagged(20 * USERS, 42, 10, 10, 0, 0);
    System.out.printf(
        "learning: false flags in ten rolls: %.1f %% of 1,000, %.1f %% of 20,000%n",
        100 * few, 100 * many);

    assertThat(few).isLessThanOrEqualTo(0.10);
    assertThat(many).isLessThanOrEqualTo(0.10);
  }

  /** The share of users whose chart raises the flag from that roll on. */
  private static double flagged(
      int users, long seed, int count, int shiftAfter, double shift, int from) {
    Users invented = new Users(seed);
    int flagged = 0;
    for (int user = 0; user < users; user++) {
      List<RollSeen> rolls = invented.rolls(TRUTH, count, shiftAfter, shift);
      List<ChartPoint> points = ControlChart.of(Users.SCATTER, rolls).points();
      flagged += points.subList(from, count).stream().anyMatch(ChartPoint::isFlagged) ? 1 : 0;
    }
    return flagged / (double) users;
  }

  /** Rolls that agree on +7 %. */
  private static List<RollSeen> quiet(int count) {
    List<RollSeen> rolls = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      rolls.add(Users.roll("A", i, 0.07));
    }
    return rolls;
  }
}
