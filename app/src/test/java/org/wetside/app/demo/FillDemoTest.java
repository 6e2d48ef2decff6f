package org.wetside.app.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.Wetside;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.app.drawer.RollRecord;
import org.wetside.app.home.Home;
import org.wetside.core.plan.RollState;
import org.wetside.core.run.EventKind;
import org.wetside.core.run.Phase;
import org.wetside.core.shelf.Bottle;

/** What the invented evenings leave behind. */
class FillDemoTest {
  private static final Instant NOW = Instant.parse("2026-01-14T20:14:00Z");

  @Test
  void everyPlaceIsFilledAndOneRunIsHalfWay(@TempDir Path folder) {
    Home home = new Home(folder);
    try (Wetside wetside = FillDemo.into(home, Clock.fixed(NOW, ZoneOffset.UTC))) {
      assertThat(home.isDemo()).isTrue();
      for (RollState state :
          new RollState[] {
            RollState.WAITING, RollState.LOADED, RollState.PROCESSED, RollState.FILED
          }) {
        assertThat(wetside.findRolls().in(state)).as(state.toString()).isNotEmpty();
      }
      assertThat(wetside.keepTanks().all()).hasSize(2);
      assertThat(wetside.keepThermometers().all()).hasSize(2);
      assertThat(wetside.sensitometry().keepStrips().all()).hasSize(3);
      assertThat(wetside.listTimes().inUse()).hasSize(1);
      assertThat(wetside.learning().seeLearned().now().lessons().lessons()).hasSize(1);
      assertThat(wetside.listBottles().all())
          .extracting(bottle -> bottle.label().letter())
          .containsExactly("D", "F", "P", "S", "W");
      assertThat(wetside.keepTonight().now().limit()).isPresent();

      BenchSnapshot running = wetside.bench().newest(1).get(0);
      assertThat(running.state().phase()).isEqualTo(Phase.RUNNING);
      assertThat(running.state().current()).isZero();
      assertThat(running.endsAt()).isAfter(NOW);
      assertThat(running.moments().start()).isBefore(NOW);
    }
  }

  @Test
  void theBooksAgreeWithTheRunsThatWereLivedThrough(@TempDir Path folder) {
    try (Wetside wetside = FillDemo.into(new Home(folder), Clock.fixed(NOW, ZoneOffset.UTC))) {
      Bottle developer = wetside.listBottles().find("D").orElseThrow();
      // two rolls at 1+1 in 600 mL and one in 300 mL of stock
      assertThat(developer.left().millilitres()).isEqualTo(1900 - 300 - 300);
      assertThat(developer.film().rolls()).isEqualTo(3);

      RollRecord record = wetside.readRecord().of("TM-03").orElseThrow();
      assertThat(record.runs()).hasSize(1);
      assertThat(record.runs().get(0).state().phase()).isEqualTo(Phase.FINISHED);
    }
  }

  @Test
  void theServerThatOpensItFindsNoGap(@TempDir Path folder) {
    Clock started = Clock.fixed(NOW, ZoneOffset.UTC);
    Clock[] real = {started};
    Clock moving =
        new Clock() {
          @Override
          public Instant instant() {
            return real[0].instant();
          }

          @Override
          public ZoneId getZone() {
            return ZoneOffset.UTC;
          }

          @Override
          public Clock withZone(ZoneId zone) {
            return real[0].withZone(zone);
          }
        };
    try (Wetside wetside = FillDemo.into(new Home(folder), moving)) {
      real[0] = Clock.offset(started, Duration.ofSeconds(4));

      wetside.bench().resume();

      assertThat(wetside.bench().newest(1).get(0).state().events())
          .as("the same conductor led the run all along")
          .noneMatch(event -> event.kind() == EventKind.GAP);
    }
  }
}
