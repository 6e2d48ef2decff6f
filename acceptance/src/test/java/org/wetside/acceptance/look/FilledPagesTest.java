package org.wetside.acceptance.look;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.acceptance.Browsing;
import org.wetside.app.Wetside;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/**
 * Pages with something on them, which the walk through an empty home does not see: each as a phone
 * by day and as a laptop by night; and what a form looks like when it is refused.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FilledPagesTest {
  private static final int REFUSED = 422;

  private Browsing browsing;
  private Wetside wetside;
  private WebServer server;
  private Page sheet;

  static Stream<String> pages() {
    return Stream.of(
        "/",
        "/drawer",
        "/drawer/TM-06",
        "/loads/" + FilledHome.PLANNED,
        "/loads/" + FilledHome.PLANNED + "/change",
        "/loads/" + FilledHome.PLANNED + "/temper",
        "/bench",
        "/bench/" + FilledHome.RUNNING,
        "/bench/test/G",
        "/bench/test/H",
        "/bench/test/film",
        "/shelf",
        "/shelf/F",
        "/shelf/G",
        "/shelf/X",
        "/shelf/O",
        "/shelf/recall",
        "/shelf/mix?dilution=1%2B1&total=600&bottle=D&rolls=2",
        "/shelf/temper?to=20&volume=1000&cold=9&hot=90",
        "/shelf/waste",
        "/shelf/waste/W1",
        "/shelf/waste/W%202",
        "/shelf/formulas",
        "/shelf/formulas/batches/1",
        "/negatives",
        "/negatives/TM-01",
        "/negatives/TM-03",
        "/equipment",
        "/equipment/backups");
  }

  @BeforeAll
  void open(@TempDir Path home) {
    wetside = FilledHome.in(home);
    server = WebServer.start(wetside, WebOptions.onPort(0));
    browsing = new Browsing();
    sheet = browsing.page(390, 844);
  }

  @AfterAll
  void close() {
    browsing.close();
    server.close();
    wetside.close();
  }

  /** One sheet for all, so that the walk stays short: a phone by day, then a laptop by night. */
  @ParameterizedTest
  @MethodSource("pages")
  void looksAsItShouldByDayAndNight(String path) {
    sheet.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
    sheet.setViewportSize(390, 844);
    Response answer = sheet.navigate(at(path));
    assertThat(answer.status()).as(path).isEqualTo(200);
    PageLook.itOpensWithASentence(sheet, path);
    PageLook.everyTargetIsLargeEnough(sheet, path);
    PageLook.axeFindsNothing(sheet, path + " by day");
    PageLook.nothingScrollsSideways(sheet, path, 320, 600, 900, 1280);
    sheet.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
    PageLook.axeFindsNothing(sheet, path + " by night");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/", "/shelf", "/shelf/F", "/loads/4", "/negatives/TM-01"})
  void theFirstViewIsLight(String path) {
    try (Page page = browsing.page(1280, 800)) {
      AtomicLong bytes = PageLook.weighed(page);
      page.navigate(at(path));
      PageLook.settled(page);
      assertThat(bytes.get()).as(path).isBetween(1L, PageLook.FIRST_VIEW_BYTES);
    }
  }

  /**
   * What was typed stands there with its message, and the page is as well made as the empty one.
   */
  @Test
  void aRefusedFormIsAWholePageWithWhatWasTyped() {
    try (Page page = browsing.page(390, 844, ColorScheme.DARK)) {
      page.navigate(at("/shelf/new"));
      page.fill("#letter", "N");
      page.fill("#contents", "Millrace");
      page.fill("#full", "500");
      page.fill("#left", "800");
      Response answer = sent(page, "contents");
      assertThat(answer.status()).isEqualTo(REFUSED);
      PageLook.settled(page);
      assertThat(page.inputValue("#contents")).isEqualTo("Millrace");
      assertThat(page.inputValue("#left")).isEqualTo("800");
      assertThat(page.locator("#left-message").innerText()).contains("800 mL", "500 mL");
      assertThat(page.getAttribute("#left", "aria-describedby")).isEqualTo("left-message");
      looksWhole(page, "a refused new bottle");
    }
  }

  @Test
  void aRefusedActOfABottleIsAWholePage() {
    refused("/shelf/X", "take", "90000", "there are only 3900 mL");
  }

  @Test
  void aRefusedStepOfABatchIsAWholePage() {
    refused("/shelf/formulas/batches/1", "amount", "9000", "ten times");
  }

  private void refused(String path, String field, String typed, String said) {
    try (Page page = browsing.page(390, 844)) {
      page.navigate(at(path));
      page.evaluate("() => document.querySelectorAll('details').forEach(one => one.open = true)");
      page.fill("#" + field, typed);
      Response answer = sent(page, field);
      assertThat(answer.status()).isEqualTo(REFUSED);
      PageLook.settled(page);
      assertThat(page.inputValue("#" + field)).isEqualTo(typed);
      assertThat(page.locator("main").innerText()).contains(said);
      looksWhole(page, path + " refused");
    }
  }

  /** A form from before the browser forgot this program: nothing is done, all of it is there. */
  @Test
  void aStaleFormIsAWholePageWithWhatWasTyped() {
    try (Page page = browsing.page(390, 844)) {
      page.navigate(at("/shelf/new"));
      page.context().clearCookies();
      page.fill("#letter", "N");
      page.fill("#contents", "Millrace");
      page.fill("#full", "500");
      Response answer = sent(page, "contents");
      assertThat(answer.status()).isEqualTo(403);
      PageLook.settled(page);
      assertThat(page.content()).contains("Millrace", "500");
      looksWhole(page, "a stale form");
      assertThat(wetside.listBottles().find("N")).isEmpty();
    }
  }

  /** Sends the form that a field is in. */
  private static Response sent(Page page, String field) {
    return page.waitForResponse(
        response -> response.request().method().equals("POST"),
        () -> page.locator("form:has(#" + field + ") button[type=submit]").first().click());
  }

  private static void looksWhole(Page page, String as) {
    PageLook.settled(page);
    PageLook.itOpensWithASentence(page, as);
    PageLook.everyTargetIsLargeEnough(page, as);
    PageLook.axeFindsNothing(page, as);
    PageLook.nothingScrollsSideways(page, as, 320, 390, 1280);
  }

  private String at(String path) {
    return server.address().resolve(path).toString();
  }
}
