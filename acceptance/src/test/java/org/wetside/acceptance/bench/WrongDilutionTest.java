package org.wetside.acceptance.bench;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.acceptance.Browsing;
import org.wetside.app.bench.AskDilutions;
import org.wetside.app.bench.SentEvent;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Placement;

/** M, 6, then the key of what was really mixed: the drain moves, and the sheet says where to. */
class WrongDilutionTest {
  private static final String MIXED_AS = "#panel .more .key";

  @Test
  void aKeyMovesTheDrainAndWithoutTheServerThereIsTheAdviceAlone(@TempDir Path home) {
    try (Browsing browsing = new Browsing();
        ReadyRun ready = new ReadyRun(home, "TRI-X 400", "D-76");
        Page page = browsing.page(1366, 768)) {
      start(ready);
      Situation.RUNNING.show(ready, page);
      Placement.Moments before = developer(ready);
      AskDilutions.Offer stock =
          ready.wetside.askDilutions().of(ready.run).others().stream()
              .filter(offer -> offer.other().dilution().label().equals("stock"))
              .findFirst()
              .orElseThrow();
      Duration time = stock.other().time().time();

      tellOfTheDilution(page);
      Locator key = page.locator(MIXED_AS, new Page.LocatorOptions().setHasText("stock: "));
      assertThat(key).containsText(stock.other().time().standing().word());
      page.keyboard().press(key.locator("kbd").innerText());

      assertThat(page.locator("#notice")).containsText("New time");
      assertThat(page.locator("#notice")).containsText("for stock. Drain at");
      assertThat(page.locator("#panel")).isHidden();
      Placement.Moments after = developer(ready);
      assertThat(after.full()).isEqualTo(before.full());
      assertThat(Duration.between(after.full(), after.end()).toSeconds())
          .isEqualTo(Math.round(time.toMillis() / 1000.0));

      ready.server.close();
      page.waitForTimeout(760); // a second press of M within 0.7 s is one press
      tellOfTheDilution(page);
      page.waitForTimeout(1_000);
      assertThat(page.locator(MIXED_AS)).hasCount(0);
    }
  }

  private static void tellOfTheDilution(Page page) {
    page.keyboard().press("m");
    page.keyboard().press("6");
    assertThat(page.locator("#panel .first")).containsText("say what was mixed");
  }

  private static Placement.Moments developer(ReadyRun ready) {
    return ready.wetside.bench().look(ready.run).moments().steps().get(0);
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
