package org.wetside.acceptance.job;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.acceptance.Browsing;
import org.wetside.acceptance.sound.Drill;
import org.wetside.app.Wetside;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.app.bench.SteadyClock;
import org.wetside.core.run.Mark;
import org.wetside.core.run.Phase;
import org.wetside.core.run.StepMarks;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/**
 * A whole run with the sound off, led by what stands on the sheet alone: the person reads the act
 * and the seconds, and presses the one key when a bath is in.
 */
class BySightTest {
  /** What a person sees: every change of the act, and every time the whole ground changes. */
  private static final String EYE =
      """
      () => {
        window.acts = []; window.grounds = [];
        const act = document.getElementById('act-words'), sheet = document.getElementById('sheet');
        let words = '', printed = false;
        const look = () => {
          const now = performance.now();
          if (act.textContent !== words) { words = act.textContent; window.acts.push([now, words]); }
          const flash = sheet.classList.contains('flash');
          if (flash !== printed) { printed = flash; window.grounds.push([now, flash]); }
        };
        const eye = new MutationObserver(look);
        eye.observe(sheet, { attributes: true, attributeFilter: ['class'] });
        eye.observe(act, { childList: true, characterData: true, subtree: true });
        look();
      }
      """;

  private static final Duration HAND = Duration.ofSeconds(4);

  /** What one look and one press take, waiting included, on a machine that is not busy. */
  private static final Duration LOOK = Duration.ofMillis(1_200);

  /** Act and ground change together; a ground just changed waits its turn. */
  private static final double SIGNAL_MILLIS = 1_700;

  @TempDir Path home;

  @Test
  void aRunIsCompletedWithTheSoundOff() throws Exception {
    Clock clock = new SteadyClock(Clock.systemUTC(), System::nanoTime);
    try (Wetside wetside = Wetside.open(home, clock);
        WebServer server = WebServer.start(wetside, WebOptions.onPort(0));
        Browsing browsing = new Browsing()) {
      Drill.whole(server.address());
      Page page = browsing.page(390, 844);
      String bench = server.address().resolve("/bench/1").toString();
      page.navigate(bench);
      page.evaluate(
          "localStorage.setItem('wetside.heard', new Date().toISOString());"
              + " localStorage.setItem('wetside.voice', 'none')");
      page.navigate(bench);
      page.waitForTimeout(1_000);
      page.keyboard().press("Escape");
      page.evaluate(EYE);
      Duration stalled = workByEye(page);
      judge(wetside.bench().look(1), stalled);
      judgeSignals(page, stalled);
    }
  }

  /**
   * Looks ten times a second; knows nothing but the words of the act and what the last key says.
   *
   * @return by how much the slowest look was late because of the machine, not of the sheet
   */
  private static Duration workByEye(Page page) {
    String done = "";
    Duration stalled = Duration.ZERO;
    Instant giveUp = Instant.now().plusSeconds(180);
    long look = System.nanoTime();
    while (Instant.now().isBefore(giveUp)) {
      long before = look;
      look = System.nanoTime();
      Duration late = Duration.ofNanos(look - before).minus(LOOK);
      stalled = late.compareTo(stalled) > 0 ? late : stalled;
      String act = page.locator("#act-words").textContent().strip();
      if (act.startsWith("Hang")) {
        return stalled;
      }
      if (act.startsWith("Really")) {
        page.keyboard().press("y");
        page.waitForTimeout(900);
        continue;
      }
      boolean pouring = act.contains(" in") || act.startsWith("Start");
      String key = page.locator("#keys .next").count() == 0 ? "" : nextKey(page);
      if (pouring && !key.isEmpty() && !key.equals(done)) {
        page.waitForTimeout(900);
        page.keyboard().press("Space");
        done = key;
      }
      page.waitForTimeout(100);
    }
    throw new AssertionError(
        "the film never hung; the sheet says " + page.textContent("#act-words"));
  }

  private static String nextKey(Page page) {
    return page.locator("#keys .next span").first().textContent();
  }

  private static void judge(BenchSnapshot run, Duration stalled) {
    assertThat(run.state().phase()).isEqualTo(Phase.FINISHED);
    List<StepMarks> steps = run.state().steps();
    assertThat(steps.get(0).pour().filter(Mark::pressed)).isPresent();
    for (int i = 0; i < steps.size(); i++) {
      // A pour that was late moves what follows: each is judged from the one before it.
      Duration late = lateness(run, i).minus(i == 0 ? Duration.ZERO : lateness(run, i - 1));
      assertThat(late.abs()).as("step " + i).isLessThan(HAND.plus(stalled.multipliedBy(2)));
    }
    assertThat(
            steps.stream().skip(1).filter(marks -> marks.full().filter(Mark::pressed).isPresent()))
        .as("baths whose filling was pressed by eye")
        .hasSize(3);
  }

  private static Duration lateness(BenchSnapshot run, int step) {
    Instant planned = run.planned().steps().get(step).begin();
    return Duration.between(planned, run.moments().steps().get(step).begin());
  }

  private static void judgeSignals(Page page, Duration stalled) {
    double apart = SIGNAL_MILLIS + stalled.toMillis();
    // A question and the first pour come of a press: whoever pressed needs no signal.
    List<?> acts =
        (List<?>) page.evaluate("window.acts.filter(a => !/^(Really|Developer in)/.test(a[1]))");
    assertThat(acts).hasSizeGreaterThan(10);
    List<?> grounds = (List<?>) page.evaluate("window.grounds");
    List<Double> flashes =
        grounds.stream()
            .map(List.class::cast)
            .filter(g -> g.get(1).equals(true))
            .map(BySightTest::at)
            .toList();
    List<Double> ends =
        grounds.stream()
            .map(List.class::cast)
            .filter(g -> g.get(1).equals(false))
            .map(BySightTest::at)
            .toList();
    assertThat(flashes).hasSizeGreaterThan(10);
    for (int i = 0; i < ends.size(); i++) {
      assertThat(ends.get(i) - flashes.get(i))
          .as("ms the ground stays changed")
          .isGreaterThanOrEqualTo(950);
    }
    for (int i = 2; i < grounds.size(); i++) {
      assertThat(at((List<?>) grounds.get(i)) - at((List<?>) grounds.get(i - 2)))
          .as("ms for two changes of the ground")
          .isGreaterThan(1_000);
    }
    for (Object act : acts) {
      double moment = at((List<?>) act);
      assertThat(flashes.stream().anyMatch(flash -> Math.abs(flash - moment) < apart))
          .as("a signal with the act %s", act)
          .isTrue();
    }
  }

  private static double at(List<?> pair) {
    return ((Number) pair.get(0)).doubleValue();
  }
}
