package org.wetside.acceptance.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.Wetside;
import org.wetside.app.bench.SteadyClock;
import org.wetside.core.process.Cue;
import org.wetside.core.run.Happening;
import org.wetside.core.run.RunEvent;
import org.wetside.core.run.RunState;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/**
 * The server is away for 90 s while one page leads two tanks, and the page is reloaded meanwhile:
 * every cue of both is heard once, and what was pressed arrives once and in order.
 */
class OutageTest {
  private static final Duration AWAY = Duration.ofSeconds(90);
  private static final double SAME_CUE_MS = 450;
  private static final double ALONE_MS = 1_000;

  @TempDir Path home;

  @Test
  void anOutageOfNinetySecondsLosesNoCueAndNoEvent() throws Exception {
    try (HiddenBrowser browser = new HiddenBrowser()) {
      List<Double> heard = new ArrayList<>();
      List<Instant> pressed = new ArrayList<>();
      int port;
      List<Double> cues;
      try (Wetside wetside = open();
          WebServer server = WebServer.start(wetside, WebOptions.onPort(0))) {
        port = server.port();
        Drill drill = Drill.on(server.address(), "2 s, then 2 s every 10 s", Duration.ofMinutes(9));
        String bench = server.address().resolve("/bench/1").toString();
        browser.open(bench);
        browser.run(
            "localStorage.setItem('wetside.heard', new Date().toISOString());"
                + " localStorage.setItem('wetside.voice', 'tones')");
        browser.open(bench);
        Thread.sleep(2_000);
        browser.press("Escape", "Escape");
        wakeSound(browser);
        drill.start();
        Thread.sleep(3_500);
        drill.beside("2 s, then 2 s every 60 s", Duration.ofMinutes(8));
        Thread.sleep(14_000);
        cues = new ArrayList<>(cues(wetside, 1));
        cues.addAll(cues(wetside, 2));
      }
      Instant left = Instant.now();
      pauseUntil(left.plusSeconds(20));
      pressed.add(keepAReading(browser));
      pauseUntil(quietMomentAfter(cues, left.plusSeconds(42)));
      heard.addAll(onTheWallClock(browser));
      browser.reload();
      Thread.sleep(1_500);
      wakeSound(browser);
      pauseUntil(left.plusSeconds(65));
      pressed.add(keepAReading(browser));
      pauseUntil(left.plus(AWAY));
      try (Wetside wetside = open();
          WebServer server = WebServer.start(wetside, WebOptions.onPort(port))) {
        Instant back = Instant.now();
        wetside.bench().resume();
        assertThat(server.port()).isEqualTo(port);
        pauseUntil(back.plusSeconds(14));
        heard.addAll(onTheWallClock(browser));
        RunState after = wetside.bench().look(1).state();
        assertThat(readings(after)).hasSize(2);
        for (int i = 0; i < 2; i++) {
          assertThat(Duration.between(pressed.get(i), readings(after).get(i)).abs())
              .isLessThan(Duration.ofSeconds(2));
        }
        for (long run = 1; run <= 2; run++) {
          RunState state = wetside.bench().look(run).state();
          assertThat(state.interrupted()).isTrue();
          assertThat(state.events())
              .as("cues of run %s that nobody told", run)
              .noneMatch(event -> event.what() instanceof Happening.CueMissed);
          assertThat(state.events())
              .as("record of run " + run)
              .anyMatch(
                  event ->
                      event.what() instanceof Happening.Note note
                          && note.text().endsWith("every cue was told"));
        }
        everyCueOnce(cues, heard, left, back);
      }
    }
  }

  private Wetside open() {
    return Wetside.open(home, new SteadyClock(Clock.systemUTC(), System::nanoTime));
  }

  private static List<Double> cues(Wetside wetside, long number) {
    var run = wetside.bench().look(number);
    return run.cues().stream().map((Cue cue) -> (double) run.at(cue).toEpochMilli()).toList();
  }

  private static List<Instant> readings(RunState state) {
    return state.events().stream()
        .filter(event -> event.what() instanceof Happening.ReadingTaken)
        .map(RunEvent::occurredAt)
        .toList();
  }

  private static void everyCueOnce(
      List<Double> cues, List<Double> heard, Instant left, Instant back) {
    double from = (double) left.toEpochMilli();
    double to = (double) back.toEpochMilli();
    List<Double> due =
        cues.stream().filter(at -> at > from && at < to).filter(at -> isAlone(at, cues)).toList();
    assertThat(due).hasSizeGreaterThan(15);
    for (double cue : due) {
      assertThat(heard.stream().filter(at -> Math.abs(at - cue) < SAME_CUE_MS).count())
          .as("times the cue was heard that was due %s s into the outage", (cue - from) / 1_000)
          .isEqualTo(1);
    }
  }

  /** Of two cues that come together an ear cannot say which it heard. */
  private static boolean isAlone(double cue, List<Double> cues) {
    return cues.stream().filter(at -> Math.abs(at - cue) < ALONE_MS).count() == 1;
  }

  /** Two and a half seconds after a bout began: nothing is due for seven seconds. */
  private static Instant quietMomentAfter(List<Double> cues, Instant earliest) {
    List<Double> coming =
        cues.stream().filter(at -> at > earliest.toEpochMilli()).sorted().toList();
    for (int i = 0; i + 1 < coming.size(); i++) {
      if (coming.get(i + 1) - coming.get(i) > 6_000) {
        return Instant.ofEpochMilli(coming.get(i).longValue() + 600);
      }
    }
    throw new IllegalStateException("no quiet moment among " + coming);
  }

  private static Instant keepAReading(HiddenBrowser browser) throws InterruptedException {
    browser.press("r", "KeyR");
    Thread.sleep(900);
    browser.press(" ", "Space");
    return Instant.now();
  }

  private static void wakeSound(HiddenBrowser browser) throws InterruptedException {
    browser.press("n", "KeyN");
    Thread.sleep(800);
    browser.press("n", "KeyN");
    Thread.sleep(1_000);
    assertThat(browser.ask("window.listening")).isEqualTo(true);
  }

  private static List<Double> onTheWallClock(HiddenBrowser browser) {
    double origin = ((Number) browser.ask("performance.timeOrigin")).doubleValue();
    return Heard.on(browser).onThePage().stream().map(at -> at + origin).toList();
  }

  private static void pauseUntil(Instant moment) throws InterruptedException {
    Thread.sleep(Math.max(0, Duration.between(Instant.now(), moment).toMillis()));
  }
}
