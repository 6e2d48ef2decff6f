package org.wetside.acceptance.look;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.acceptance.Browsing;
import org.wetside.app.Wetside;
import org.wetside.app.demo.FillDemo;
import org.wetside.app.home.Home;
import org.wetside.core.learning.ContrastBasis;
import org.wetside.core.learning.ContrastWord;
import org.wetside.core.learning.Developed;
import org.wetside.core.learning.EdgePrint;
import org.wetside.core.learning.FilmInDeveloper;
import org.wetside.core.learning.Judgement;
import org.wetside.core.learning.ReferencePair;
import org.wetside.core.learning.Seen;
import org.wetside.core.learning.ShadowWord;
import org.wetside.core.learning.Used;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.store.Database;
import org.wetside.store.Judgements;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/**
 * What was learned, as a page with a chart that raises its flag: accessible by day and night, never
 * sideways. All rolls are invented. Pictures are left under {@code target/pictures}.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LearningLookTest {
  private static final Instant NOW = Instant.parse("2026-01-14T20:14:00Z");
  private static final Path PICTURES = Path.of("target", "pictures");

  /** Measured contrast of invented rolls; the last three after something had changed. */
  private static final double[] CONTRASTS = {
    0.60, 0.63, 0.59, 0.62, 0.61, 0.58, 0.62, 0.60, 0.53, 0.54, 0.52
  };

  private Browsing browsing;
  private Wetside wetside;
  private WebServer server;

  @BeforeAll
  void open(@TempDir Path folder) throws IOException {
    Files.createDirectories(PICTURES);
    wetside = FillDemo.into(new Home(folder), Clock.fixed(NOW, ZoneOffset.UTC));
    Seen words =
        new Seen(
            EdgePrint.USUAL,
            Optional.of(ShadowWord.WEAK),
            Optional.of(ContrastWord.RATHER_FLAT),
            Optional.empty());
    for (String roll : new String[] {"TM-01", "TM-02"}) {
      assertThat(wetside.learning().judgeRoll().judge(roll, words, Optional.empty()).time().says())
          .isPresent();
    }
    assertThat(wetside.learning().acceptFactor().accept("TRI-X 400", "D-76").rolls()).isEqualTo(2);
    try (Database beside = Database.open(folder.resolve("wetside.db"))) {
      for (int i = 0; i < CONTRASTS.length; i++) {
        Judgement judged = measured(i);
        beside.change(session -> keep(new Judgements(session), judged));
      }
    }
    server = WebServer.start(wetside, WebOptions.onPort(0));
    browsing = new Browsing();
  }

  private static void keep(Judgements judgements, Judgement judged) {
    assertThat(judgements.keep(judged).id()).isPositive();
  }

  private static Judgement measured(int i) {
    double light = 0.40 + CONTRASTS[i] * ReferencePair.STOPS * Math.log10(2);
    Instant at = NOW.minus(Duration.ofDays(60 - i * 3L));
    return new Judgement(
        0,
        "TM-" + (60 + i),
        new FilmInDeveloper("100TMX", "D-76"),
        "T-MAX 100",
        Optional.of(ExposureIndex.of(100)),
        at,
        new Seen(
            EdgePrint.NONE,
            Optional.empty(),
            Optional.empty(),
            Optional.of(
                new ReferencePair(Optional.of(0.30), 0.40, Math.round(light * 100) / 100.0))),
        new Developed(
            at,
            Optional.of(Duration.ofMinutes(8)),
            Optional.of(Duration.ofMinutes(8)),
            "DV-S09",
            Optional.of(new ContrastBasis("contrast index of an invented series", 0.62, 0.8)),
            ""),
        new Used(
            "tap",
            i < 8 ? "glass rod" : "probe",
            i < 4 ? "D, mixed 2025-11-01" : "D, mixed 2025-12-01"));
  }

  @AfterAll
  void close() {
    browsing.close();
    server.close();
    wetside.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/curves/learning",
        "/negatives/TM-01",
        "/negatives/TM-03/judge",
        "/times?film=TRI-X+400&developer=D-76&dilution=1%2B1&ei=400&temp=20C"
      })
  void isAccessibleByDayAndNightAndNeverSideways(String path) {
    look(path, 390, 844, ColorScheme.LIGHT, "phone");
    look(path, 320, 640, ColorScheme.DARK, "small-night");
    look(path, 1280, 800, ColorScheme.LIGHT, "laptop");
    look(path, 1280, 800, ColorScheme.DARK, "laptop-night");
  }

  private void look(String path, int width, int height, ColorScheme scheme, String name) {
    try (Page page = browsing.page(width, height, scheme)) {
      page.navigate(server.address().resolve(path).toString());
      page.screenshot(
          new Page.ScreenshotOptions()
              .setFullPage(true)
              .setPath(
                  PICTURES.resolve(
                      path.replaceAll("[/?].*?(\\w+)$", "$1").replaceAll("\\W", "-")
                          + "-"
                          + name
                          + ".png")));
      assertThat(new AxeBuilder(page).analyze().getViolations())
          .as(path + " " + name)
          .extracting(rule -> rule.getId() + " " + rule.getNodes())
          .isEmpty();
      int wide = (int) page.evaluate("() => document.documentElement.scrollWidth");
      assertThat(wide).as(path + " " + name).isLessThanOrEqualTo(width);
      assertThat(page.locator("h1").innerText().strip()).endsWith(".");
    }
  }
}
