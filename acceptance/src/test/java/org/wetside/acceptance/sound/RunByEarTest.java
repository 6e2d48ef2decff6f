package org.wetside.acceptance.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.app.sound.OpusFile;
import org.wetside.app.sound.Sampling;
import org.wetside.core.plan.RollState;
import org.wetside.core.run.EventKind;
import org.wetside.core.run.Phase;
import org.wetside.core.run.RunEvent;

/**
 * A run completed with the display off: whoever does it knows nothing but the sound of the track,
 * pours when the pour is heard, drains when the drain is heard and hangs the film at the end.
 */
class RunByEarTest {
  private static final Duration WITHIN = Duration.ofMillis(100);

  private ServedRun run;

  @BeforeEach
  void open(@TempDir Path home) throws Exception {
    run = new ServedRun(home);
  }

  @AfterEach
  void close() {
    run.close();
  }

  @Test
  void aRunIsCompletedByItsSoundAlone() throws Exception {
    List<Ear.Heard> heard = listen();
    Instant first = HandTime.BEGIN;
    List<Instant> pours = new ArrayList<>();
    List<Instant> drains = new ArrayList<>();
    run.press("started", "");
    pours.add(first);
    int step = 0;
    for (Ear.Heard one : heard) {
      run.time.goOn(first.plusMillis(Math.round(one.milliseconds())));
      Instant now = run.time.instant();
      switch (one.act()) {
        case "pour in" -> {
          if (now.isAfter(first.plus(WITHIN))) {
            run.press("step begun", ",\"moment\":\"pour\",\"step\":" + ++step);
            pours.add(now);
          }
        }
        case "drain" -> {
          run.press("step drained", ",\"step\":" + step);
          drains.add(now);
        }
        case "hang" -> run.press("finished", "");
        default -> {}
      }
    }
    completed(run.wetside.bench().look(1), pours, drains);
  }

  /** The first pour is the beginning of the track: both are the moment of the press. */
  private List<Ear.Heard> listen() throws Exception {
    byte[] track = run.get(ServedRun.track("opus", HandTime.BEGIN)).body();
    List<Ear.Heard> heard =
        new Ear(KnownTones.of(run.wetside)).listen(OpusFile.decode(track), Sampling.RATE);
    assertThat(heard.get(0).act()).isEqualTo("pour in");
    return heard;
  }

  private void completed(BenchSnapshot end, List<Instant> pours, List<Instant> drains) {
    assertThat(end.state().phase()).isEqualTo(Phase.FINISHED);
    int steps = end.state().plan().steps().size();
    assertThat(pours).hasSize(steps);
    assertThat(drains).hasSize(steps);
    // 9:00 from tank full, which is 10 s after the first pour, and drained 15 s before its end.
    assertThat(Duration.between(pours.get(0), drains.get(0)))
        .isCloseTo(Duration.ofSeconds(535), WITHIN);
    assertThat(Duration.between(pours.get(0), pours.get(1)))
        .isCloseTo(Duration.ofSeconds(550), WITHIN);
    List<RunEvent> events = end.state().events();
    assertThat(events.stream().map(RunEvent::kind))
        .doesNotContain(EventKind.CUE_MISSED, EventKind.GAP, EventKind.LENGTHENED);
    for (int i = 0; i < steps; i++) {
      assertThat(end.moments().steps().get(i).begin())
          .isBetween(pours.get(i).minus(WITHIN), pours.get(i).plus(WITHIN));
      assertThat(end.moments().steps().get(i).drain())
          .isBetween(drains.get(i).minus(WITHIN), drains.get(i).plus(WITHIN));
    }
    assertThat(run.wetside.findRolls().byNumber("A-1").orElseThrow().state())
        .isEqualTo(RollState.PROCESSED);
  }
}
