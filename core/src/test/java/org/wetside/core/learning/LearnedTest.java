package org.wetside.core.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The belief after judged rolls, against closed forms and against invented users. */
class LearnedTest {
  private static final FilmInDeveloper A = new FilmInDeveloper("A", "soup");
  private static final FilmInDeveloper B = new FilmInDeveloper("B", "soup");
  private static final int USERS = 1_000;
  private static final double TRUTH = Math.log(1.10);

  @Test
  void nothingSeenIsWhatIsPrintedWithItsScatter() {
    Belief before = Learned.from(Users.SCATTER, List.of()).of(A);

    assertThat(before.mean()).isZero();
    assertThat(before.sd()).isCloseTo(Math.hypot(0.10, 0.08), within(1e-12));
    assertThat(before.rolls()).isZero();
  }

  /** One film: a normal mean with a normal prior, known in closed form. */
  @Test
  void oneFilmIsTheClosedForm() {
    List<RollSeen> rolls = List.of(Users.roll("A", 0, 0.10), Users.roll("A", 1, 0.04));
    Belief belief = Learned.from(Users.SCATTER, rolls).of(A);

    double prior = 1 / (0.10 * 0.10 + 0.08 * 0.08);
    double each = 1 / (0.04 * 0.04 + 0.05 * 0.05);
    assertThat(belief.sd()).isCloseTo(1 / Math.sqrt(prior + 2 * each), within(1e-12));
    assertThat(belief.mean()).isCloseTo(each * 0.14 / (prior + 2 * each), within(1e-12));
    assertThat(belief.rolls()).isEqualTo(2);
  }

  /**
   * Two films, one roll of the first: what the second learns from it is the covariance of the two,
   * 0.10², over the variance of the roll.
   */
  @Test
  void anotherFilmLearnsWhatTheyHaveInCommon() {
    Learned learned = Learned.from(Users.SCATTER, List.of(Users.roll("A", 0, 0.12)));

    double variance = 0.10 * 0.10 + 0.08 * 0.08 + 0.04 * 0.04 + 0.05 * 0.05;
    assertThat(learned.of(B).mean()).isCloseTo(0.12 * 0.01 / variance, within(1e-12));
    assertThat(learned.of(B).sd())
        .isCloseTo(Math.sqrt(0.0164 - 0.01 * 0.01 / variance), within(1e-12));
    assertThat(learned.common().mean()).isCloseTo(learned.of(B).mean(), within(1e-12));
  }

  @Test
  void theOrderOfTheRollsDoesNotMatter() {
    Users users = new Users(4);
    List<RollSeen> rolls = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      rolls.add(Users.roll(i % 3 == 0 ? "A" : "B", i, users.normal(0.1)));
    }
    Belief once = Learned.from(Users.SCATTER, rolls).of(B);
    Collections.reverse(rolls);
    Belief again = Learned.from(Users.SCATTER, rolls).of(B);

    assertThat(again.mean()).isCloseTo(once.mean(), within(1e-12));
    assertThat(again.sd()).isCloseTo(once.sd(), within(1e-12));
  }

  /** The model's own figures: median error at most 3 %, nine in ten bands hold 87 to 93 %. */
  @Test
  void fiveRollsAreEnough() {
    Users users = new Users(20260101);
    double[] errors = new double[USERS];
    int held = 0;
    for (int user = 0; user < USERS; user++) {
      Belief belief = Learned.from(Users.SCATTER, users.rolls(TRUTH, 5, 5, 0)).of(A);
      errors[user] = Math.abs(Math.exp(belief.mean() - TRUTH) - 1);
      held += belief.holds(TRUTH) ? 1 : 0;
    }
    Arrays.sort(errors);
    double median = (errors[USERS / 2 - 1] + errors[USERS / 2]) / 2;
    System.out.printf(
        "learning: median error after five rolls %.2f %%, bands hold %.1f %%%n",
        100 * median, 100.0 * held / USERS);

    assertThat(median).isLessThanOrEqualTo(0.03);
    assertThat(held / (double) USERS).isBetween(0.87, 0.93);
  }

  /** The same over users as the model itself supposes them, in two films at once. */
  @Test
  void bandsHoldForUsersOfAnyFactor() {
    Users users = new Users(7);
    int held = 0;
    for (int user = 0; user < USERS; user++) {
      double common = users.normal(0.10);
      double a = common + users.normal(0.08);
      double b = common + users.normal(0.08);
      List<RollSeen> rolls = new ArrayList<>(users.rolls(a, 4, 4, 0));
      rolls.add(Users.roll("B", 4, b + users.normal(Math.hypot(0.04, 0.05))));
      held += Learned.from(Users.SCATTER, rolls).of(B).holds(b) ? 1 : 0;
    }
    System.out.printf("learning: bands of a second film hold %.1f %%%n", 100.0 * held / USERS);

    assertThat(held / (double) USERS).isBetween(0.87, 0.93);
  }
}
