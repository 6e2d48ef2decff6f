package org.wetside.app.keeping;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.Wetside;
import org.wetside.app.bench.Alarm;
import org.wetside.app.home.Home;

class DailyBackupTest {
  private final MovedClock clock = new MovedClock("2026-01-14T20:14:00Z");
  private final HandAlarm alarm = new HandAlarm();

  @TempDir Path folder;

  /** Rings when the test says so. */
  private static final class HandAlarm implements Alarm {
    private @Nullable Instant when;
    private @Nullable Runnable ring;

    @Override
    public void set(Instant moment, Runnable what) {
      when = moment;
      ring = what;
    }

    void passTo(MovedClock clock) {
      clock.pass(Duration.between(clock.instant(), java.util.Objects.requireNonNull(when)));
      java.util.Objects.requireNonNull(ring).run();
    }

    @Override
    public void close() {
      ring = null;
    }
  }

  private static void add(Wetside wetside, String title) {
    assertThat(wetside.addRolls().lines("135 36 TRI-X 400 @400 \"" + title + "\"").orRefuse())
        .hasSize(1);
  }

  private static List<String> names(Home home) {
    return new KeptBackups(home).all().stream().map(KeptBackup::name).sorted().toList();
  }

  private static int rolls(Home home, String name) {
    return CheckData.of(home.backups().resolve(name)).rolls();
  }

  @Test
  void oneIsMadeOnEveryDayOnWhichSomethingChanged() {
    Home home = new Home(folder);
    try (Wetside wetside = Wetside.open(folder, clock)) {
      DailyBackup daily = new DailyBackup(wetside.makeBackup(), clock, alarm);
      daily.begin();
      alarm.passTo(clock);
      assertThat(names(home)).as("there are no data yet").isEmpty();
      add(wetside, "harbour");
      for (int hours = 0; hours < 24 * 3; hours++) {
        alarm.passTo(clock);
      }
      assertThat(names(home)).containsExactly("daily-2026-01-14.db");
      add(wetside, "lighthouse");
      alarm.passTo(clock);
      assertThat(names(home)).containsExactly("daily-2026-01-14.db", "daily-2026-01-17.db");
      add(wetside, "pier");
      assertThat(rolls(home, "daily-2026-01-17.db")).isEqualTo(2);
      alarm.passTo(clock);
      assertThat(rolls(home, "daily-2026-01-17.db")).isEqualTo(3);
      assertThat(rolls(home, "daily-2026-01-14.db")).isEqualTo(1);
      add(wetside, "weir");
      daily.close();
      assertThat(rolls(home, "daily-2026-01-17.db")).as("stopped").isEqualTo(4);
      assertThat(daily.failed()).isEmpty();
      assertThat(home.backups().toFile().list()).hasSize(2);
    }
  }

  @Test
  void whatIsNotOursIsNeverTouched() throws IOException {
    Home home = new Home(folder);
    Files.createDirectories(home.backups());
    Path own = Files.writeString(home.backups().resolve("daily-of-mine.db"), "mine");
    try (Wetside wetside = Wetside.open(folder, clock)) {
      DailyBackup daily = new DailyBackup(wetside.makeBackup(), clock, alarm);
      add(wetside, "0");
      KeptBackup byHand = wetside.makeBackup().byHand();
      for (int day = 0; day < 60; day++) {
        add(wetside, "roll " + day);
        daily.look();
        clock.pass(Duration.ofDays(1));
      }
      assertThat(names(home)).hasSize(Rotation.DAYS + Rotation.WEEKS + 1).contains(byHand.name());
      assertThat(own).hasContent("mine");
      for (KeptBackup kept : wetside.keptBackups().all()) {
        assertThat(CheckData.of(kept.file()).faults()).as(kept.name()).isEmpty();
      }
    }
  }

  @Test
  void aFailureIsSaidAndTriedAgainAndNothingElseStops() throws IOException {
    Home home = new Home(folder);
    Path inTheWay = Files.writeString(home.backups(), "a file where the folder should be");
    try (Wetside wetside = Wetside.open(folder, clock);
        DailyBackup daily = new DailyBackup(wetside.makeBackup(), clock, alarm)) {
      add(wetside, "harbour");
      daily.begin();
      alarm.passTo(clock);
      DailyBackup.Failed failed = daily.failed().orElseThrow();
      assertThat(failed.reason()).contains(home.backups().toString());
      assertThat(failed.at()).isEqualTo(clock.instant());
      add(wetside, "lighthouse");
      Files.delete(inTheWay);
      alarm.passTo(clock);
      assertThat(daily.failed()).isEmpty();
      assertThat(names(home)).containsExactly("daily-2026-01-14.db");
    }
  }
}
