package org.wetside.acceptance.bench;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.acceptance.Browsing;
import org.wetside.app.Wetside;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/** Tests of baths as a person makes them: by keys alone, without scripts, across a dead server. */
class BathTestPageTest {
  private final HandClock clock = new HandClock();
  private Browsing browsing;
  private Wetside wetside;
  private WebServer server;

  @TempDir private Path home;

  @BeforeEach
  void open() {
    wetside = Wetside.open(home, clock);
    Volume litre = Volume.ofLitres(1);
    wetside
        .addBottle()
        .add(
            BottleLabel.of("F", "rapid fixer", BottleRole.WORKING, BathKind.FIXER, litre)
                .withDilution("1+4"),
            litre);
    wetside
        .addBottle()
        .add(BottleLabel.of("D", "D-76", BottleRole.STOCK, BathKind.DEVELOPER, litre), litre);
    wetside
        .addBottle()
        .add(BottleLabel.of("S", "stop", BottleRole.WORKING, BathKind.STOP_BATH, litre), litre);
    server = WebServer.start(wetside, WebOptions.onPort(0));
    browsing = new Browsing();
  }

  @AfterEach
  void close() {
    browsing.close();
    server.close();
    wetside.close();
  }

  @Test
  void aBaselineAndALaterClearingTestByKeyboardOnly() {
    try (Page page = browsing.page(1366, 768)) {
      page.navigate(at("/bench/test/F"));
      type(page, "film", "TRI-X 400");
      type(page, "temperature", "20");
      tabTo(page, "next");
      page.keyboard().press("Space");
      assertThat(page.locator("h1")).hasText("Is it clear?");
      clock.pass(Duration.ofSeconds(45));
      assertThat(page.locator("#mark")).hasText("");
      page.keyboard().press("Space");
      assertThat(page.locator("h1"))
          .hasText("Baseline made for bottle F: TRI-X 400 in 1+4 at 20 °C clears in 0:45.");
      assertThat(page.locator(".t-fix").first()).containsText("Fix for 1:30 2 × the clearing time");

      page.navigate(at("/bench/test/F"));
      assertThat(page.locator("#film")).hasValue("TRI-X 400");
      assertThat(page.locator("#fresh")).not().isChecked();
      type(page, "temperature", "20.5");
      page.keyboard().press("Enter");
      assertThat(page.locator("#mark")).hasText("spent from 1:30");
      clock.pass(Duration.ofSeconds(60));
      page.keyboard().press("Space");
      assertThat(page.locator("h1")).hasText("Bottle F fixes: clear in 1:00, 1.33 × the baseline.");
    }
  }

  @Test
  void aClearingTimeThatHasDoubledWithoutScriptsLeadsToTheRecallList() {
    try (Page page = browsing.pageWithoutScripts(390, 844)) {
      clip(page, "20");
      clock.pass(Duration.ofSeconds(45));
      page.locator("#next").click();
      assertThat(page.locator("h1")).containsText("Baseline made for bottle F");
      clip(page, "20");
      clock.pass(Duration.ofSeconds(90));
      page.locator("#next").click();
      assertThat(page.locator("h1"))
          .hasText("Bottle F is spent: 1:30, 2.00 × the baseline. Do not fix in it.");
      assertThat(page.locator("a[href='/shelf/recall']")).isVisible();
    }
  }

  @Test
  void aDeadServerLosesNothingOfATestThatRuns() {
    try (Page page = browsing.page(390, 844)) {
      clip(page, "20");
      server.close();
      wetside.close();
      clock.pass(Duration.ofSeconds(30));
      wetside = Wetside.open(home, clock);
      server = WebServer.start(wetside, WebOptions.onPort(0));
      clock.pass(Duration.ofSeconds(20));
      page.navigate(at("/bench/test/f"));
      assertThat(page.locator("#seconds")).hasText("0:50");
      page.locator("#next").click();
      assertThat(page.locator("h1")).containsText("clears in 0:50.");
    }
  }

  @Test
  void anotherFilmIsNotComparedAndTheFormKeepsWhatWasTyped() {
    try (Page page = browsing.page(1366, 768)) {
      clip(page, "20");
      clock.pass(Duration.ofSeconds(45));
      page.locator("#next").click();
      page.navigate(at("/bench/test/F"));
      page.locator("#film").fill("T-MAX 400");
      page.locator("#temperature").fill("70");
      page.locator("#next").click();
      assertThat(page.locator("#temperature-message"))
          .containsText("temperature of the fixer \"70 °C\" is refused: 0 to 50 °C");
      assertThat(page.locator("#film")).hasValue("T-MAX 400");
      page.locator("#temperature").fill("24");
      page.locator("#next").click();
      clock.pass(Duration.ofSeconds(45));
      page.locator("#next").click();
      assertThat(page.locator("h1")).containsText("Not comparable: another film");
      assertThat(page.locator("h1")).containsText("another temperature");
    }
  }

  @Test
  void theDropIsNotJudgedBeforeItsTimeAndSilverNitrateHasItsCaution() {
    wetside.addRolls().lines("135 36 TRI-X 400 @400");
    try (Page page = browsing.page(390, 844)) {
      page.navigate(at("/bench/test/film?rolls=26-001"));
      assertThat(page.locator(".caution").first()).containsText("silver nitrate: oxidiser; burns");
      page.locator("#next").click();
      assertThat(page.locator("#mark")).hasText("leave the drop until 2:00");
      clock.pass(Duration.ofSeconds(40));
      page.locator("#next").click();
      assertThat(page.locator(".b-notice")).containsText("40 s");
      clock.pass(Duration.ofSeconds(80));
      page.locator("#next").click();
      assertThat(page.locator("h1")).containsText("No stain on 26-001");
    }
  }

  @Test
  void axeFindsNothingOnAnyOfItsPagesByDayAndNight() {
    for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
      for (int width : List.of(320, 390, 1366)) {
        try (Page page = browsing.page(width, 844, scheme)) {
          page.navigate(at("/bench/test/S"));
          check(page, "no test");
          page.navigate(at("/bench/test/F?kind=iodide"));
          check(page, "iodide");
          page.navigate(at("/bench/test/film"));
          check(page, "film");
          clip(page, "20");
          check(page, "running");
          clock.pass(Duration.ofSeconds(45));
          page.locator("#next").click();
          check(page, "baseline");
          page.navigate(at("/bench/test/D"));
          check(page, "leader");
          page.locator("#next").click();
          page.locator("button[value=bad]").click();
          check(page, "failed leader");
        }
      }
    }
  }

  private void check(Page page, String which) {
    String picture = System.getProperty("wetside.pictures");
    int width = page.viewportSize().width;
    if (picture != null) {
      page.screenshot(
          new Page.ScreenshotOptions()
              .setPath(Path.of(picture, which.replace(' ', '-') + "-" + width + ".png")));
    }
    assertThat(
            new AxeBuilder(page)
                .analyze().getViolations().stream()
                    .map(rule -> rule.getId() + " " + rule.getNodes()))
        .as(which + " " + width)
        .isEmpty();
    assertThat((int) page.evaluate("() => document.documentElement.scrollWidth"))
        .as(which + " sideways at " + width)
        .isLessThanOrEqualTo(width);
    assertThat(
            (List<?>)
                page.evaluate(
                    "() => [...document.querySelectorAll('.key, .t-key')]"
                        + ".filter(e => e.getBoundingClientRect().height < 96)"
                        + ".map(e => e.outerHTML.slice(0, 80))"))
        .as(which + " keys at " + width)
        .isEmpty();
  }

  private void clip(Page page, String degrees) {
    page.navigate(at("/bench/test/F?kind=clearing"));
    page.locator("#film").fill("TRI-X 400");
    page.locator("#temperature").fill(degrees);
    page.locator("#next").click();
    assertThat(page.locator("h1")).hasText("Is it clear?");
  }

  private static void type(Page page, String id, String text) {
    tabTo(page, id);
    page.keyboard().press("Control+A");
    page.keyboard().type(text);
  }

  private static void tabTo(Page page, String id) {
    for (int i = 0; i < 60; i++) {
      if (id.equals(page.evaluate("() => document.activeElement.id"))) {
        return;
      }
      page.keyboard().press("Tab");
    }
    throw new AssertionError("no way by Tab to " + id);
  }

  private String at(String path) {
    return server.address().resolve(path).toString();
  }
}
