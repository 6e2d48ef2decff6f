package org.wetside.acceptance.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.acceptance.Browsing;
import org.wetside.app.bench.SentEvent;
import org.wetside.core.run.Happening;
import org.wetside.core.run.MishapAdvice;
import org.wetside.reference.Mishaps;

/** M, then one key: the first advice for every mishap, with the server and without it. */
class MishapKeysTest {
  private static final double AT_ONCE_MILLIS = 1_000;
  private static final String LETTERS = "1234567890a";

  /** On the page's own clock: from the key going down to the words standing there. */
  private static final String STOPWATCH =
      """
      () => {
        document.addEventListener('keydown', () => { window.pressedAt = performance.now(); }, true);
        new MutationObserver(() => {
          const words = document.querySelector('#panel .first')?.textContent ?? '';
          if (words !== (window.advised ?? '')) {
            window.advised = words;
            window.took = performance.now() - window.pressedAt;
          }
        }).observe(document.getElementById('panel'), { childList: true, subtree: true });
      }
      """;

  @Test
  void everyMishapIsAdvisedWithinASecondWithOrWithoutTheServer(@TempDir Path home) {
    List<MishapAdvice> all = Mishaps.all();
    assertThat(all).hasSize(LETTERS.length());
    try (Browsing browsing = new Browsing();
        ReadyRun ready = new ReadyRun(home);
        Page page = browsing.page(1366, 768)) {
      start(ready);
      Situation.RUNNING.show(ready, page);
      page.evaluate(STOPWATCH);
      all.forEach(mishap -> pressAndRead(page, all, mishap));
      assertThat(stored(ready))
          .containsExactlyElementsOf(all.stream().map(MishapKeysTest::inRecord).toList());

      ready.server.close();
      all.forEach(mishap -> pressAndRead(page, all, mishap));
      assertThat(keptForTheServer(page, ready.run)).isEqualTo(all.size());
    }
  }

  private static void pressAndRead(Page page, List<MishapAdvice> all, MishapAdvice mishap) {
    page.keyboard().press("m");
    page.keyboard().press(String.valueOf(LETTERS.charAt(all.indexOf(mishap))));
    page.waitForFunction("words => window.advised === words", mishap.firstMinute());
    assertThat(((Number) page.evaluate("window.took")).doubleValue())
        .as("ms to the advice for: %s", mishap.what())
        .isBetween(0.0, AT_ONCE_MILLIS);
    assertThat(page.locator("#panel").innerText()).contains(mishap.afterwards());
    page.keyboard().press("Space");
    page.waitForTimeout(760); // a second press of M within 0.7 s is one press
  }

  private static int keptForTheServer(Page page, long run) {
    return (int) page.evaluate("JSON.parse(localStorage['wetside.pressed." + run + "']).length");
  }

  private static String inRecord(MishapAdvice mishap) {
    return mishap.what() + ": " + mishap.firstMinute();
  }

  private static List<String> stored(ReadyRun ready) {
    return ready.wetside.bench().look(ready.run).state().applied().stream()
        .map(event -> event.what())
        .filter(Happening.Mishap.class::isInstance)
        .map(Happening.Mishap.class::cast)
        .map(mishap -> mishap.what() + ": " + mishap.advice())
        .toList();
  }

  private static void start(ReadyRun ready) {
    ready
        .wetside
        .bench()
        .take(
            ready.run,
            new SentEvent(
                "first-pour",
                Optional.of(0),
                new Happening.Started(List.of(), true),
                Instant.now(),
                "hand",
                ""));
  }
}
