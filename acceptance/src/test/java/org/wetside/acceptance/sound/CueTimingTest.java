package org.wetside.acceptance.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.Wetside;
import org.wetside.app.bench.SteadyClock;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/**
 * Cues of a real run as a real browser renders them, with its tab hidden and its processor six
 * times as slow: each is there once, where the plan has it. A plain interval timer runs beside it.
 */
class CueTimingTest {
  private static final String BOUTS = "2 s, then 2 s every 6 s";

  private static final double WITHIN_SAMPLES_MS = 20;
  private static final double WITHIN_PAGE_MS = 50;
  private static final double SHARE = 0.99;

  @TempDir Path home;

  @Test
  void cuesSoundWhereThePlanHasThemForAMinute() throws Exception {
    measure(Duration.ofSeconds(60));
  }

  @Test
  @Tag("long")
  void cuesSoundWhereThePlanHasThemForFiveMinutes() throws Exception {
    measure(Duration.ofMinutes(5));
  }

  @Test
  @Tag("long")
  void cuesSoundWhereThePlanHasThemForAnHour() throws Exception {
    measure(Duration.ofMinutes(60));
  }

  private void measure(Duration length) throws Exception {
    Clock clock = new SteadyClock(Clock.systemUTC(), System::nanoTime);
    try (Wetside wetside = Wetside.open(home, clock);
        WebServer server = WebServer.start(wetside, WebOptions.onPort(0));
        HiddenBrowser browser = new HiddenBrowser()) {
      Drill drill = Drill.on(server.address(), BOUTS, length.plusMinutes(3));
      browser.open(server.address().resolve("/bench/1").toString());
      browser.run(
          "localStorage.setItem('wetside.heard', new Date().toISOString());"
              + " localStorage.setItem('wetside.voice', 'tones')");
      browser.open(server.address().resolve("/bench/1").toString());
      Thread.sleep(500);
      browser.press("n", "KeyN");
      Thread.sleep(800);
      browser.press("n", "KeyN");
      Thread.sleep(1_500);
      assertThat(browser.ask("window.listening")).isEqualTo(true);
      drill.start();
      Thread.sleep(1_000);
      List<Double> cues = new ArrayList<>();
      browser.run(
          "window.run = null; fetch('/api/runs/1').then(r => r.json()).then(r => { window.run = r; })");
      Thread.sleep(1_000);
      List<?> moments = (List<?>) browser.ask("window.run.cues.map(c => Date.parse(c.at))");
      moments.forEach(moment -> cues.add(((Number) moment).doubleValue()));
      double serverMinusPage = serverMinusPage(browser);
      browser.run(
          "window.plainTimer(arguments[0].filter(at => at > Date.now() + 2000), arguments[1])",
          cues,
          serverMinusPage);
      browser.slow(6);
      browser.run(
          "window.seen = []; setInterval(() => window.seen.push(document.visibilityState), 1000)");
      browser.hide();
      Instant end = Instant.now().plus(length);
      while (Instant.now().isBefore(end)) {
        Thread.sleep(1_000);
      }
      browser.show();
      List<?> seen = (List<?>) browser.ask("window.seen");
      long hidden = seen.stream().filter("hidden"::equals).count();
      assertThat(hidden)
          .as("looks that found the page hidden")
          .isGreaterThan(seen.size() * 8L / 10);
      judge(browser, cues, serverMinusPage(browser), end, length);
    }
  }

  private static void judge(
      HiddenBrowser browser,
      List<Double> cues,
      double serverMinusPage,
      Instant end,
      Duration length) {
    Heard heard = Heard.on(browser);
    List<Double> scheduled = Heard.numbers(browser.ask("window.scheduled"));
    List<Double> due =
        cues.stream()
            .filter(at -> at > end.toEpochMilli() - length.toMillis() + 2_000)
            .filter(at -> at < end.toEpochMilli() - 2_000)
            .toList();
    List<Double> fromPlan = new ArrayList<>();
    List<Double> fromSchedule = new ArrayList<>();
    int notOnce = 0;
    for (double cue : due) {
      double page = cue - serverMinusPage;
      List<Double> near =
          heard.audioSeconds().stream()
              .filter(at -> Math.abs(heard.pageOf(at) - page) < 450)
              .toList();
      if (near.size() != 1) {
        notOnce++;
        System.out.printf(
            Locale.ROOT,
            "cue %.1f s before the end was heard %d times%n",
            (end.toEpochMilli() - cue) / 1_000,
            near.size());
        continue;
      }
      double at = near.get(0);
      fromPlan.add(Math.abs(heard.pageOf(at) - page));
      fromSchedule.add(
          scheduled.stream().mapToDouble(when -> Math.abs(when - at) * 1_000).min().orElseThrow());
    }
    List<Double> plain =
        Heard.numbers(browser.ask("window.plain")).stream().map(Math::abs).toList();
    System.out.printf(
        Locale.ROOT,
        "cues in %d s, tab hidden, processor 6 times slower: %d, not exactly once: %d;"
            + " from the audio clock %s; from the page's plan %s; plain timer %s%n",
        length.toSeconds(),
        due.size(),
        notOnce,
        spread(fromSchedule),
        spread(fromPlan),
        spread(plain));
    assertThat(due)
        .as("enough cues to judge by")
        .hasSizeGreaterThan((int) (length.toSeconds() / 5));
    assertThat(notOnce).as("each cue exactly once").isZero();
    long mayBeOutside = Math.max(1, Math.round((1 - SHARE) * due.size()));
    assertThat(outside(fromSchedule, WITHIN_SAMPLES_MS)).isLessThanOrEqualTo(mayBeOutside);
    assertThat(outside(fromPlan, WITHIN_PAGE_MS)).isLessThanOrEqualTo(mayBeOutside);
  }

  /** The server's clock less performance.now, as the page itself has it: its monotonic plan. */
  private static double serverMinusPage(HiddenBrowser browser) {
    String own =
        "JSON.parse(localStorage.getItem('wetside.run.1')).offset + performance.timeOrigin";
    return ((Number) browser.ask(own)).doubleValue();
  }

  /**
   * One in a hundred may be; of fewer than a hundred, one: the machine of a test has other work.
   */
  private static long outside(List<Double> errors, double within) {
    return errors.stream().filter(error -> error > within).count();
  }

  private static String spread(List<Double> errors) {
    double[] sorted = errors.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    return sorted.length == 0
        ? "none"
        : String.format(
            Locale.ROOT,
            "median %.1f ms, 99 %% within %.1f ms, worst %.1f ms",
            sorted[sorted.length / 2],
            sorted[(int) Math.ceil(0.99 * sorted.length) - 1],
            sorted[sorted.length - 1]);
  }
}
