package org.wetside.app.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.app.Wetside;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.BottleState;
import org.wetside.core.trial.ClipWish;
import org.wetside.core.trial.Sighting;
import org.wetside.core.trial.Trial;
import org.wetside.core.trial.TrialKind;
import org.wetside.core.trial.TrialOutcome;

/** Tests of baths over a real database: clock, outcome, and what the ledger is told. */
class BathTestsTest {
  private static final Optional<ClipWish> NONE = Optional.empty();

  private final HandClock clock = new HandClock();
  private Wetside wetside;

  @TempDir private Path home;

  @BeforeEach
  void open() {
    wetside = Wetside.open(home, clock);
    add("F", BathKind.FIXER);
    add("D", BathKind.DEVELOPER);
    add("S", BathKind.STOP_BATH);
  }

  @AfterEach
  void close() {
    wetside.close();
  }

  @Test
  void aBaselineAndALaterTimeStandInTheLedger() {
    assertThat(clip(45, 20, true).word()).isEqualTo("baseline made");
    assertThat(clip(60, 20.5, false).word()).isEqualTo("passed");
    BottleState state = wetside.listBottles().find("F").orElseThrow().state();
    assertThat(UsualClip.baseline(wetside.listBottles().find("F").orElseThrow()).orElseThrow())
        .satisfies(first -> assertThat(first.seconds()).isEqualTo(45));
    assertThat(state.proof().orElseThrow().passed()).isTrue();
    assertThat(state.clearing().orElseThrow().what().clearing().orElseThrow().seconds())
        .isEqualTo(60);
    assertThat(clip(90, 20, false).word()).isEqualTo("failed");
    assertThat(wetside.listBottles().find("F").orElseThrow().state().fixFailed()).isTrue();
  }

  @Test
  void whatCannotBeComparedSaysNothingForOrAgainstTheBottle() {
    clip(45, 20, true);
    long lines = lines("F");
    assertThat(clip(200, 24, false)).isInstanceOf(TrialOutcome.NotComparable.class);
    Trial left = start("F", TrialKind.CLEARING, wish(20, false));
    clock.pass(Duration.ofSeconds(60));
    assertThat(judge(left, Sighting.BAD)).isInstanceOf(TrialOutcome.NotJudged.class);
    Trial unsure = start("F", TrialKind.IODIDE, NONE);
    assertThat(
            wetside
                .bathTests()
                .judgeTest()
                .judge(unsure.id(), Sighting.UNSURE, "light went out")
                .end())
        .hasValueSatisfying(
            end ->
                assertThat(end.outcome()).isEqualTo(new TrialOutcome.NotJudged("light went out")));
    assertThat(lines("F")).isEqualTo(lines);
    assertThat(wetside.bathTests().findTests().of("F").orElseThrow().over()).hasSize(4);
  }

  @Test
  void keysPressedTwiceDoNothingTwice() {
    Trial one = start("D", TrialKind.LEADER, NONE);
    assertThat(start("D", TrialKind.LEADER, NONE)).isEqualTo(one);
    judge(one, Sighting.GOOD);
    long lines = lines("D");
    Trial again = wetside.bathTests().judgeTest().judge(one.id(), Sighting.BAD, "");
    assertThat(again.end().orElseThrow().outcome()).isInstanceOf(TrialOutcome.Passed.class);
    assertThat(lines("D")).isEqualTo(lines);
  }

  @Test
  void aTestGoesOnAcrossARestartByTheClockOfTheHome() {
    Trial begun = start("F", TrialKind.CLEARING, wish(20, true));
    clock.pass(Duration.ofSeconds(17));
    wetside.close();
    clock.pass(Duration.ofSeconds(25));
    wetside = Wetside.open(home, clock);
    assertThat(wetside.bathTests().findTests().running()).containsExactly(begun);
    Trial over = wetside.bathTests().judgeTest().judge(begun.id(), Sighting.GOOD, "");
    assertThat(over.end().orElseThrow().took()).isEqualTo(Duration.ofSeconds(42));
  }

  @Test
  void whatCannotBeIsRefusedAndNothingIsLost() {
    refused(() -> start("S", TrialKind.CLEARING, wish(20, true)), "it says nothing of stop bath");
    refused(() -> start("D", TrialKind.IODIDE, NONE), "make the leader test");
    refused(() -> start("X", TrialKind.LEADER, NONE), "no bottle of that letter");
    refused(() -> start("F", TrialKind.CLEARING, NONE), "say the film");
    refused(() -> wish(60, true), "60 °C\" is refused: 0 to 50 °C");
    Trial running = start("F", TrialKind.CLEARING, wish(20, true));
    refused(() -> start("F", TrialKind.IODIDE, NONE), "still runs");
    clock.pass(Duration.ofHours(2));
    refused(() -> judge(running, Sighting.GOOD), "1 s to 1 h");
    assertThat(wetside.bathTests().findTests().running()).containsExactly(running);
    wetside.changeBottle().discard("F", "");
    refused(() -> judge(running, Sighting.BAD), "discarded while the test ran");
    wetside.bathTests().judgeTest().judge(running.id(), Sighting.UNSURE, "");
    assertThat(wetside.bathTests().findTests().running()).isEmpty();
  }

  @Test
  void washedFilmIsJudgedAfterItsTimeAndKeptWithItsRolls() {
    wetside.addRolls().lines("135 36 TRI-X 400 @400");
    refused(
        () -> wetside.bathTests().startTest().ofFilm(List.of("XX-99")), "no roll of that number");
    refused(() -> wetside.bathTests().startTest().ofFilm(List.of(" ")), "say which roll");
    Trial drop = wetside.bathTests().startTest().ofFilm(List.of("26-001"));
    clock.pass(Duration.ofSeconds(119));
    refused(() -> judge(drop, Sighting.GOOD), "it is left for 120 s");
    clock.pass(Duration.ofSeconds(1));
    assertThat(judge(drop, Sighting.GOOD)).isInstanceOf(TrialOutcome.Passed.class);
    assertThat(wetside.bathTests().findTests().ofRoll("26-001")).hasSize(1);
  }

  /** Whatever is pressed: one test at a time, and a ledger line only for what was said. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void randomPressesKeepTheBooks(long seed) {
    Random random = new Random(seed);
    long said = lines("F");
    for (int i = 0; i < 60; i++) {
      Optional<Trial> open = wetside.bathTests().findTests().of("F").orElseThrow().open();
      clock.pass(Duration.ofSeconds(1 + random.nextInt(200)));
      if (open.isEmpty() || random.nextInt(4) == 0) {
        TrialKind kind = random.nextBoolean() ? TrialKind.CLEARING : TrialKind.IODIDE;
        try {
          start("F", kind, wish(18 + random.nextInt(4), random.nextInt(5) == 0));
        } catch (BadValueException runs) {
          assertThat(open).isPresent();
        }
      } else {
        Sighting seen = List.of(Sighting.values()).get(random.nextInt(3));
        TrialOutcome outcome = judge(open.get(), seen);
        boolean speaks =
            !(outcome instanceof TrialOutcome.NotComparable)
                && !(outcome instanceof TrialOutcome.NotJudged);
        said += speaks ? 1 : 0;
      }
      assertThat(lines("F")).isEqualTo(said);
      assertThat(wetside.bathTests().findTests().running().size()).isLessThanOrEqualTo(1);
    }
  }

  private TrialOutcome clip(int seconds, double celsius, boolean fresh) {
    Trial begun = start("F", TrialKind.CLEARING, wish(celsius, fresh));
    clock.pass(Duration.ofSeconds(seconds));
    return judge(begun, Sighting.GOOD);
  }

  private Trial start(String letter, TrialKind kind, Optional<ClipWish> clip) {
    return wetside.bathTests().startTest().of(letter, kind, clip);
  }

  private TrialOutcome judge(Trial trial, Sighting seen) {
    return wetside
        .bathTests()
        .judgeTest()
        .judge(trial.id(), seen, "")
        .end()
        .orElseThrow()
        .outcome();
  }

  private static Optional<ClipWish> wish(double celsius, boolean fresh) {
    return Optional.of(new ClipWish("TRI-X 400", "1+4", Temperature.ofCelsius(celsius), fresh));
  }

  private long lines(String letter) {
    return wetside.listBottles().find(letter).orElseThrow().state().lines();
  }

  private void add(String letter, BathKind bath) {
    Volume litre = Volume.ofLitres(1);
    wetside
        .addBottle()
        .add(BottleLabel.of(letter, bath.word(), BottleRole.WORKING, bath, litre), litre);
  }

  private static void refused(Runnable act, String words) {
    assertThatThrownBy(act::run).isInstanceOf(BadValueException.class).hasMessageContaining(words);
  }

  /** A clock that goes on when it is told to. */
  private static final class HandClock extends Clock {
    private Instant now = Instant.parse("2026-01-14T19:00:00Z");

    void pass(Duration time) {
      now = now.plus(time);
    }

    @Override
    public Instant instant() {
      return now;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }
  }
}
