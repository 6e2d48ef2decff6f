package org.wetside.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Vessel;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Standing;

class SharingTest {
  private static final Tank DOUBLE =
      new Tank(
          "Double",
          Vessel.SMALL_TANK,
          List.of(
              new Tank.Room(FilmFormat.SMALL, 2, Volume.ofMillilitres(300)),
              new Tank.Room(FilmFormat.MEDIUM, 1, Volume.ofMillilitres(500))),
          Volume.ofMillilitres(650));

  @Test
  void rollsWithinTheToleranceShareTheTimeBetweenThem() {
    Sharing sharing = judge(timed("A-1", 600), timed("A-2", 640));
    assertThat(sharing).isInstanceOf(Sharing.Together.class);
    Sharing.Together together = (Sharing.Together) sharing;
    // geometric middle of 600 s and 640 s: 619.68 s
    assertThat(together.time()).contains(Duration.ofSeconds(620));
    assertThat(together.deviations())
        .allSatisfy(d -> assertThat(Math.abs(d.timeError())).isLessThanOrEqualTo(0.05));
  }

  @Test
  void rollsBeyondTheToleranceAreNamedWithTheirTimes() {
    Sharing sharing = judge(timed("A-1", 600), timed("A-2", 700));
    assertThat(((Sharing.Apart) sharing).reasons())
        .containsExactly(
            new Sharing.TimesApart(
                "A-1", Duration.ofSeconds(600), "A-2", Duration.ofSeconds(700), 0.05));
  }

  @Test
  void theContrastErrorFollowsTheSlopeOfTheSeries() {
    RollTime flat = new RollTime(roll("A-1", "135"), time(600), standing(), Optional.of(0.7));
    Sharing.Together together = (Sharing.Together) judge(flat, timed("A-2", 640));
    double factor = Math.sqrt(640.0 / 600.0);
    assertThat(together.deviations().get(0).contrastError().orElseThrow())
        .isCloseTo(Math.pow(factor, 0.7) - 1, within(1e-12));
    assertThat(together.deviations().get(1).contrastError()).isEmpty();
  }

  @Test
  void tooManyReelsAndOtherKindsAreRefused() {
    assertThat(
            ((Sharing.Apart) judge(timed("A-1", 600), timed("A-2", 600), timed("A-3", 600)))
                .reasons())
        .containsExactly(new Sharing.TooMany("Double", Map.of(FilmFormat.SMALL, 3)));
    RollTime colour =
        new RollTime(
            new Roll(
                "C-1",
                RollLine.parse("135 36 GOLD 200 C-41"),
                Optional.empty(),
                Instant.EPOCH,
                RollState.WAITING,
                Optional.empty()),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    assertThat(((Sharing.Apart) judge(timed("A-1", 600), colour)).reasons())
        .containsExactly(
            new Sharing.OtherKind(
                "A-1", FilmKind.BLACK_AND_WHITE, "C-1", FilmKind.COLOUR_NEGATIVE));
  }

  @Test
  void aFormatTheTankDoesNotTakeIsNamed() {
    RollTime sheet = new RollTime(roll("S-1", "4x5"), time(600), standing(), Optional.empty());
    assertThat(((Sharing.Apart) judge(sheet)).reasons())
        .containsExactly(new Sharing.NoRoom("S-1", FilmSize.SHEET_4X5, "Double"));
  }

  @Test
  void twoFormatsShareTheHeightOfTheTank() {
    assertThat(DOUBLE.fits(Map.of(FilmFormat.SMALL, 2))).isTrue();
    assertThat(DOUBLE.fits(Map.of(FilmFormat.SMALL, 1, FilmFormat.MEDIUM, 1))).isFalse();
    assertThat(DOUBLE.covers(Map.of(FilmFormat.SMALL, 2))).isEqualTo(Volume.ofMillilitres(600));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void aCommonTimeIsWithinTheToleranceOfEveryRollOrTheRollsAreApart(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int round = 0; round < 500; round++) {
      List<RollTime> rolls = new ArrayList<>();
      double shortest = 300 + random.nextDouble() * 600;
      for (int i = 0; i < 2; i++) {
        rolls.add(timed("R-" + i, shortest * (1 + random.nextDouble() * 0.15)));
      }
      double tolerance = random.nextDouble() * 0.12;
      Sharing sharing = Sharing.of(rolls, DOUBLE, tolerance);
      double a = rolls.get(0).time().orElseThrow().toMillis() / 1000.0;
      double b = rolls.get(1).time().orElseThrow().toMillis() / 1000.0;
      boolean overlap = Math.max(a, b) * (1 - tolerance) <= Math.min(a, b) * (1 + tolerance);
      assertThat(sharing instanceof Sharing.Together).isEqualTo(overlap);
      if (sharing instanceof Sharing.Together together) {
        assertThat(together.deviations())
            .allSatisfy(
                d -> assertThat(Math.abs(d.timeError())).isLessThanOrEqualTo(tolerance + 1e-9));
      }
    }
  }

  private static Sharing judge(RollTime... rolls) {
    return Sharing.of(List.of(rolls), DOUBLE, Sharing.USUAL_TOLERANCE);
  }

  private static RollTime timed(String number, double seconds) {
    return new RollTime(roll(number, "135"), time(seconds), standing(), Optional.empty());
  }

  private static Optional<Duration> time(double seconds) {
    return Optional.of(Duration.ofMillis(Math.round(seconds * 1000)));
  }

  private static Optional<Standing> standing() {
    return Optional.of(Standing.PUBLISHED);
  }

  private static Roll roll(String number, String size) {
    return new Roll(
        number,
        RollLine.parse(size + " TRI-X @400"),
        Optional.empty(),
        Instant.EPOCH,
        RollState.WAITING,
        Optional.empty());
  }
}
