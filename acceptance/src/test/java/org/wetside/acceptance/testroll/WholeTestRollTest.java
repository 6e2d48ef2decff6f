package org.wetside.acceptance.testroll;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.acceptance.Browsing;
import org.wetside.app.Wetside;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/**
 * One roll from its plan to a time among the user's own, over five weeks: the program is ended and
 * started again between any two evenings. The densities are invented, by a softplus whose gradient
 * grows with the time; the answer is worked beside the test.
 */
class WholeTestRollTest {
  private static final Instant BEGIN = Instant.parse("2026-01-10T10:00:00Z");

  /** Base plus fog, and a soft toe about the speed point of a film of EI 200. */
  private static final double FOG = 0.25;

  private static final double TOE = 0.12;
  private static final double FOOT = -2.55;

  @TempDir Path home;
  private Browsing browsing;
  private Wetside wetside;
  private WebServer server;

  @BeforeEach
  void open() {
    browsing = new Browsing();
    start(0);
  }

  @AfterEach
  void close() {
    server.close();
    wetside.close();
    browsing.close();
  }

  private void start(int days) {
    wetside = Wetside.open(home, Clock.fixed(BEGIN.plus(Duration.ofDays(days)), ZoneOffset.UTC));
    server = WebServer.start(wetside, WebOptions.onPort(0));
  }

  private void daysLater(int days) {
    server.close();
    wetside.close();
    start(days);
  }

  private void goTo(Page page, String path) {
    page.navigate(server.address().resolve(path).toString());
  }

  @Test
  void aFilmIsMeasuredOverFiveWeeks() {
    try (Page page = browsing.page(1280, 800)) {
      goTo(page, "/curves");
      page.locator("text=Test rolls").click();
      page.locator("text=Plan a test roll").click();
      page.locator("#film").fill("TRI-X 400");
      page.locator("#index").fill("400");
      page.locator("#developer").fill("D-76");
      page.locator("#dilution").fill("1+1");
      page.locator("#temp").fill("20");
      page.locator("#metered").fill("1/4000 at f/16");
      page.locator("#middle").fill("8:00");
      page.locator("button.first").click();
      // 1/1000 at f/16 is two stops more than metered and the series begins four under it
      assertThat(page.locator("#metered-message")).containsText("6 stops less light");
      assertThat(page.locator("#film")).hasValue("TRI-X 400");
      page.locator("#metered").fill("1/60 at f/8");
      page.locator("button.first").click();
      assertThat(page.locator("h1")).hasText("Next: Measure the leader of a spoilt film.");
      page.locator("#note").fill("L 104 mm");
      page.locator("button.first").click();
      done(page, "Fix two stops on the table");
    }
    daysLater(2);
    try (Page phone = browsing.page(390, 844)) {
      goTo(phone, "/curves/testrolls");
      assertThat(phone.locator("h1")).containsText("Set up card, light and camera");
      phone.locator("a.way").click();
      done(phone, "Set up card, light and camera");
      done(phone, "Meter the card");
      done(phone, "Expose the 36 frames");
      done(phone, "Rewind and mark the cassette");
    }
    daysLater(9);
    try (Page phone = browsing.page(390, 844)) {
      goTo(phone, "/curves/testrolls/1/change");
      phone.locator("button.first").click();
      assertThat(phone.locator(".refusal")).containsText("its frames are exposed");
      goTo(phone, "/curves/testrolls/1");
      done(phone, "Cut the roll in full dark");
      developed(phone, 1, "5:45");
      developed(phone, 2, "8:00");
    }
    daysLater(20);
    try (Page page = browsing.page(1280, 800)) {
      goTo(page, "/curves/testrolls/1");
      developed(page, 3, "11:20");
      assertThat(page.locator("ol.steps")).containsText("Really 11:20 at 20.5 °C, 30 Jan 2026.");
      page.locator("a.first").click();
      page.locator("[name=a1]").fill("0.25");
      page.locator("[name=a2]").fill("0,26");
      page.locator("button[value=keep]").click();
      assertThat(page.locator(".said")).hasText("Kept as you typed it.");
    }
    daysLater(34);
    try (Page page = browsing.page(1280, 800)) {
      goTo(page, "/curves/testrolls/1/pieces/1");
      assertThat(page.locator("[name=a2]")).hasValue("0,26");
      page.locator("button[value=curve]").click();
      assertThat(page.locator("#a2-message")).containsText("decimal mark is a comma");
      assertThat(page.locator("[name=a1]")).hasValue("0.25");
      read(page, 1, 0.48);
      read(page, 2, 0.54);
      read(page, 3, 0.75);
      assertThat(page.locator("h1")).hasText("Next: Read the three curves together.");
      page.locator("a.first").click();
      normalIsBetweenTheSecondAndTheThird(page);
    }
  }

  private static void done(Page page, String step) {
    assertThat(page.locator("h1")).hasText("Next: " + step + ".");
    page.locator("button.first").click();
    // a page that is closed while it is being left can wait for ever
    assertThat(page.locator("h1")).not().hasText("Next: " + step + ".");
  }

  private static void developed(Page page, int piece, String time) {
    assertThat(page.locator("h1")).containsText("Develop piece " + piece + " for ");
    assertThat(page.locator(".caution").first()).isVisible();
    page.locator("#time").fill(time);
    page.locator("#temp").fill("20.5");
    page.locator("button.first").click();
    assertThat(page.locator("h1")).not().containsText("Develop piece " + piece + " for ");
  }

  private void read(Page page, int piece, double gradient) {
    goTo(page, "/curves/testrolls/1/pieces/" + piece);
    int blank = (piece - 1) * 12 + 1;
    for (String column : new String[] {"a", "b"}) {
      page.locator("[name=" + column + blank + "]").fill("0.25");
      for (int i = 0; i < 9; i++) {
        double logH = Math.log10(8.0 / 400) + (i - 4) * Math.log10(2);
        double density = FOG + gradient * TOE * Math.log1p(Math.exp((logH - FOOT) / TOE));
        page.locator("[name=" + column + (blank + 1 + i) + "]")
            .fill(String.format(Locale.ROOT, "%.2f", density));
      }
    }
    page.locator("button[value=curve]").click();
    assertThat(page.locator(".said")).hasText("Piece " + piece + " is curve " + piece + ".");
  }

  /**
   * A normal subject wants a contrast index of 1.05 / (2.20 − 0.40) = 0.58. Far up the curve the
   * gradient is that of the formula; over the span of the contrast index the toe takes a little
   * off, so that 0.58 lies above the 0.60 of the second piece's formula and below the 0.75 of the
   * third.
   */
  private static void normalIsBetweenTheSecondAndTheThird(Page page) {
    assertThat(page.locator("h1")).containsText("For a normal subject develop");
    String time = page.locator("h1 b").first().innerText();
    String[] parts = time.split(":", -1);
    int seconds = Integer.parseInt(parts[0]) * 60 + Integer.parseInt(parts[1]);
    assertThat(seconds).isBetween(8 * 60, 11 * 60 + 20);
    page.locator("form.n-time:has([name=n][value='0']) button").click();
    assertThat(page.locator(".said")).containsText("is among your times, as measured");
    page.navigate(page.url().replaceFirst("/curves.*", "/times"));
    assertThat(page.locator("#own tbody")).containsText("TRI-X 400");
    assertThat(page.locator("#own tbody")).containsText(time);
    assertThat(page.locator("#own tbody")).containsText("measured");
  }
}
