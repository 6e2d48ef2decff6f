package org.wetside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
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
import org.wetside.core.strip.KeptStrip;
import org.wetside.core.strip.MadeWith;
import org.wetside.core.strip.StepLight;
import org.wetside.core.strip.StepScale;
import org.wetside.core.strip.StripReading;

class StripsTest {
  private static final Instant NOW = Instant.parse("2026-01-15T20:03:00Z");

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

  @Test
  void everyKindOfStripReadsBackAsItWasWritten() {
    List<FilmStrip> strips =
        List.of(
            strip(StepLight.CALIBRATED, new StepScale.LogExposures(), 0.25),
            strip(
                StepLight.RELATIVE,
                new StepScale.TabletSteps(
                    LogExposure.ofLog10LuxSeconds(-0.6),
                    List.of(OpticalDensity.of(0.05), OpticalDensity.of(0.2))),
                null),
            strip(StepLight.CAMERA, new StepScale.CameraStops(ExposureIndex.of(400)), null));
    for (FilmStrip strip : strips) {
      long id = database.inTransaction(s -> new Strips(s).add(strip, NOW));
      assertThat(database.<Optional<KeptStrip>>read(s -> new Strips(s).find(id)))
          .contains(new KeptStrip(id, strip, NOW));
    }
    assertThat(database.<List<KeptStrip>>read(s -> new Strips(s).all())).hasSize(3);
  }

  @Test
  void aWithdrawnStripIsNotShownButItsReadingsStay() {
    FilmStrip strip = strip(StepLight.CALIBRATED, new StepScale.LogExposures(), null);
    long old = database.inTransaction(s -> new Strips(s).add(strip, NOW));
    long anew = database.inTransaction(s -> new Strips(s).add(strip, NOW));
    assertThat(
            database.<Boolean>inTransaction(
                s -> new Strips(s).withdraw(old, Optional.of(anew), NOW)))
        .isTrue();
    assertThat(
            database.<Boolean>inTransaction(
                s -> new Strips(s).withdraw(old, Optional.empty(), NOW)))
        .isFalse();
    assertThat(database.<List<KeptStrip>>read(s -> new Strips(s).all()))
        .extracting(KeptStrip::id)
        .containsExactly(anew);
    assertThat(
            database.<List<Long>>read(
                s ->
                    s.list(
                        "SELECT count(*) AS n FROM strip_reading WHERE strip_id = ?",
                        row -> row.whole("n"),
                        old)))
        .containsExactly(3L);
  }

  private static FilmStrip strip(StepLight light, StepScale scale, @Nullable Double baseFog) {
    return new FilmStrip(
        "TRI-X 400",
        "D-76",
        Dilution.parse("1+1"),
        Duration.ofSeconds(580),
        Optional.of(Temperature.ofCelsius(20)),
        Vessel.SMALL_TANK,
        Optional.of(LocalDate.of(2026, 1, 11)),
        light,
        scale,
        List.of(reading(1, 0.2), reading(1, 0.21), reading(2, 0.5)),
        Optional.ofNullable(baseFog).map(OpticalDensity::of),
        0.01,
        new MadeWith("no. 2", "flatbed", Optional.of(LocalDate.of(2026, 1, 10))),
        "read twice");
  }

  private static StripReading reading(double place, double density) {
    return new StripReading(place, OpticalDensity.of(density));
  }
}
