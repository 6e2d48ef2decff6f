package org.wetside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.core.development.Vessel;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.LogExposure;
import org.wetside.core.quantity.OpticalDensity;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.strip.FilmStrip;
import org.wetside.core.strip.MadeWith;
import org.wetside.core.strip.StepLight;
import org.wetside.core.strip.StepScale;
import org.wetside.core.strip.StripReading;
import org.wetside.core.testroll.CameraExposure;
import org.wetside.core.testroll.CameraRange;
import org.wetside.core.testroll.KeptTestRoll;
import org.wetside.core.testroll.PieceDeveloped;
import org.wetside.core.testroll.RollPlan;
import org.wetside.core.testroll.StepDone;
import org.wetside.core.testroll.TestRoll;
import org.wetside.core.testroll.TestStep;
import org.wetside.core.testroll.ThreeTimes;
import org.wetside.core.testroll.TypedReading;

class TestRollsTest {
  private static final Instant NOW = Instant.parse("2026-01-15T20:03:00Z");
  private static final Instant LATER = Instant.parse("2026-02-20T19:00:00Z");

  @TempDir Path folder;
  private Database database;

  @BeforeEach
  void open() {
    database = Database.open(folder.resolve("wetside.db"));
  }

  @AfterEach
  void close() {
    database.close();
  }

  private static TestRoll roll(String metered) {
    return new TestRoll(
        "TRI-X 400",
        Optional.of(ExposureIndex.of(400)),
        "D-76",
        Dilution.parse("1+1"),
        Optional.of(Temperature.ofCelsius(20)),
        Vessel.SMALL_TANK,
        new RollPlan(
            CameraExposure.parse("metered exposure", metered),
            CameraRange.USUAL,
            ThreeTimes.around(Duration.ofMinutes(8))));
  }

  private KeptTestRoll find(long id) {
    return database.read(s -> new TestRolls(s).find(id)).orElseThrow();
  }

  private long strip() {
    FilmStrip strip =
        new FilmStrip(
            "TRI-X 400",
            "D-76",
            Dilution.parse("1+1"),
            Duration.ofMinutes(8),
            Optional.empty(),
            Vessel.SMALL_TANK,
            Optional.empty(),
            StepLight.RELATIVE,
            new StepScale.TabletSteps(
                LogExposure.ofLog10LuxSeconds(0), List.of(OpticalDensity.of(0.05))),
            List.of(new StripReading(1, OpticalDensity.of(0.3))),
            Optional.empty(),
            0.01,
            MadeWith.NOT_SAID,
            "");
    return database.inTransaction(s -> new Strips(s).add(strip, NOW));
  }

  @Test
  void aRollReadsBackAsItWasWritten() {
    long id = database.inTransaction(s -> new TestRolls(s).add(roll("1/60@f8"), NOW));
    assertThat(find(id))
        .isEqualTo(
            new KeptTestRoll(id, roll("1/60@f8"), NOW, Map.of(), Map.of(), Map.of(), Map.of()));
    database.change(s -> new TestRolls(s).replan(id, roll("1/125@f5.6")));
    assertThat(find(id).roll()).isEqualTo(roll("1/125@f5.6"));
  }

  @Test
  void whatWasDoneAndTypedIsKept() {
    long id = database.inTransaction(s -> new TestRolls(s).add(roll("1/60@f8"), NOW));
    PieceDeveloped developed =
        new PieceDeveloped(
            Duration.ofSeconds(350),
            Optional.of(Temperature.ofCelsius(20.5)),
            LocalDate.of(2026, 2, 1));
    database.change(
        s -> {
          TestRolls rolls = new TestRolls(s);
          rolls.tick(id, TestStep.CARD, new StepDone(NOW, "north window"));
          rolls.tick(id, TestStep.METER, new StepDone(NOW, ""));
          rolls.tick(id, TestStep.METER, new StepDone(LATER, "f/8 again"));
          rolls.tick(id, TestStep.EXPOSE, new StepDone(NOW, ""));
          rolls.untick(id, TestStep.EXPOSE);
          rolls.develop(id, 1, developed);
          rolls.type(id, new TypedReading(2, "0.3l", ""));
          rolls.type(id, new TypedReading(2, "0.31", "0.32"));
        });
    KeptTestRoll kept = find(id);
    assertThat(kept.done())
        .isEqualTo(
            Map.of(
                TestStep.CARD, new StepDone(NOW, "north window"),
                TestStep.METER, new StepDone(NOW, "f/8 again")));
    assertThat(kept.developed()).isEqualTo(Map.of(1, developed));
    assertThat(kept.typed()).isEqualTo(Map.of(2, new TypedReading(2, "0.31", "0.32")));
    assertThat(kept.next()).contains(TestStep.LEADER);
  }

  @Test
  void aCurveReadAgainIsFoundFromTheOneBefore() {
    long id = database.inTransaction(s -> new TestRolls(s).add(roll("1/60@f8"), NOW));
    long first = strip();
    long second = strip();
    database.change(
        s -> {
          TestRolls rolls = new TestRolls(s);
          rolls.develop(
              id,
              2,
              new PieceDeveloped(
                  Duration.ofMinutes(8), Optional.empty(), LocalDate.of(2026, 2, 1)));
          rolls.join(id, 2, first);
        });
    assertThat(find(id).curves()).isEqualTo(Map.of(2, first));
    database.inTransaction(s -> new Strips(s).withdraw(first, Optional.of(second), LATER));
    assertThat(find(id).curves()).isEqualTo(Map.of(2, second));
    database.inTransaction(s -> new Strips(s).withdraw(second, Optional.empty(), LATER));
    assertThat(find(id).curves()).isEmpty();
  }

  @Test
  void aRollPutAwayIsNotShown() {
    long first = database.inTransaction(s -> new TestRolls(s).add(roll("1/60@f8"), NOW));
    long second = database.inTransaction(s -> new TestRolls(s).add(roll("1/60@f8"), LATER));
    assertThat(database.read(s -> new TestRolls(s).all()).stream().map(KeptTestRoll::id))
        .containsExactly(second, first);
    assertThat(database.<Boolean>inTransaction(s -> new TestRolls(s).putAway(first, LATER)))
        .isTrue();
    assertThat(database.<Boolean>inTransaction(s -> new TestRolls(s).putAway(first, LATER)))
        .isFalse();
    assertThat(database.<Optional<KeptTestRoll>>read(s -> new TestRolls(s).find(first))).isEmpty();
  }
}
