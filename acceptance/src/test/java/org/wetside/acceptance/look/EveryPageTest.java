package org.wetside.acceptance.look;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetside.acceptance.Browsing;
import org.wetside.app.Wetside;
import org.wetside.app.curves.StripDraft;
import org.wetside.app.curves.StripReader;
import org.wetside.app.density.Calibrate;
import org.wetside.app.density.Densitometry;
import org.wetside.app.density.TabletLines;
import org.wetside.app.formula.WeighOut;
import org.wetside.app.testroll.KeepTestRolls;
import org.wetside.app.testroll.TestRollDraft;
import org.wetside.app.testroll.TestRollReader;
import org.wetside.core.bath.BathKind;
import org.wetside.core.instrument.Calibration;
import org.wetside.core.instrument.Instrument;
import org.wetside.core.instrument.InstrumentKind;
import org.wetside.core.instrument.StepTablet;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.testroll.PieceDeveloped;
import org.wetside.core.testroll.TestRoll;
import org.wetside.core.testroll.TestStep;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/**
 * What holds for every page: it is light, accessible by day and night, and never scrolls sideways.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EveryPageTest {
  private static final int[] WIDTHS = {320, 390, 600, 768, 899, 900, 1280, 1600};

  private Browsing browsing;
  private Wetside wetside;
  private WebServer server;

  static Stream<String> pages() {
    return Stream.of(
        "/marks",
        "/nowhere",
        "/",
        "/drawer",
        "/bench",
        "/shelf",
        "/shelf/new",
        "/shelf/mix",
        "/shelf/F",
        "/shelf/F?at=15",
        "/shelf/R/care",
        "/shelf/R/care?rolls=2&perRoll=30",
        "/shelf/fixers",
        "/shelf/recall",
        "/shelf/waste",
        "/bench/test/F",
        "/equipment/measures",
        "/equipment/backups",
        "/shelf/wash",
        "/shelf/wash?method=fills&volume=500mL&fills=6&dwell=20s",
        "/shelf/formulas",
        "/shelf/formulas/new",
        "/shelf/formulas/D-76?make=700&balance=0.1&have3=sodium+sulfite%2C+heptahydrate",
        "/shelf/formulas/D-76?make=5",
        "/shelf/formulas/HT-2",
        "/shelf/formulas/batches/1",
        "/bench/test/film",
        "/curves/instruments",
        "/curves/instruments/flatbed",
        "/curves/instruments/flatbed/calibrate",
        "/curves/tablets",
        "/curves/tablets/T12",
        "/curves/patches",
        "/curves",
        "/curves/new",
        "/curves/1",
        "/curves/family?strip=1&strip=2&strip=3",
        "/curves/testrolls",
        "/curves/testrolls/new",
        "/curves/testrolls/1",
        "/curves/testrolls/1/change",
        "/curves/testrolls/2",
        "/curves/testrolls/2/pieces/1",
        "/negatives",
        "/curves/learning",
        "/equipment",
        "/equipment/waters",
        "/screens",
        "/processes",
        "/processes/small-tank",
        "/processes/new",
        "/processes/mine",
        "/processes/mine/change",
        "/loads/new",
        "/times",
        "/times?film=TRI-X+400&developer=D-76&dilution=stock&ei=800&temp=20C&vessel=small");
  }

  @BeforeAll
  void open(@TempDir Path home) {
    wetside = Wetside.open(home, Clock.systemUTC());
    wetside.keepProcess().copy("small-tank", "mine", "").orRefuse();
    bottle("F", "fixer", BathKind.FIXER);
    bottle("G", "fixer", BathKind.FIXER);
    bottle("R", "D-76", BathKind.DEVELOPER);
    wetside.turnFixers().pair("F", "G");
    wetside
        .mixBatch()
        .begin(
            new WeighOut.Question(
                "F-24", Optional.empty(), List.of(), Optional.empty(), Optional.empty()));
    instrument();
    measureStrips();
    testRolls();
    server = WebServer.start(wetside, WebOptions.onPort(0));
    browsing = new Browsing();
  }

  private void bottle(String letter, String contents, BathKind bath) {
    Volume full = Volume.ofLitres(1);
    wetside.addBottle().add(BottleLabel.of(letter, contents, BottleRole.WORKING, bath, full), full);
  }

  /** A scanner with two calibrations; its pixels follow 60000 · 10^−D. */
  private void instrument() {
    StringBuilder tablet = new StringBuilder();
    StringBuilder seen = new StringBuilder();
    for (int step = 1; step <= 12; step++) {
      double density = 0.15 * step;
      tablet.append(String.format(Locale.ROOT, "%d,%.2f%n", step, density));
      seen.append(step).append(',').append(60000 * Math.pow(10, -density)).append('\n');
    }
    Densitometry here = wetside.densitometry();
    here.keepTablets().put(new StepTablet("T12", "sheet", TabletLines.parse(tablet.toString())));
    here.keepInstruments().add(new Instrument("flatbed", InstrumentKind.SCANNER, "gamma 1.0"));
    for (int day : new int[] {3, 10}) {
      here.calibrate()
          .by(
              new Calibrate.Wish(
                  "flatbed",
                  "T12",
                  LocalDate.of(2026, 1, day),
                  Calibration.Method.FORMULA,
                  seen.toString(),
                  ""));
    }
  }

  /** Three strips that are computed, not read, one with a step that lies off. */
  private void measureStrips() {
    double[] gammas = {0.50, 0.60, 0.70};
    String[] minutes = {"7:00", "9:30", "13:00"};
    for (int i = 0; i < gammas.length; i++) {
      StringBuilder readings = new StringBuilder();
      for (int step = 0; step < 21; step++) {
        double x = -3.40 + 0.15 * step;
        double density = 0.20 + gammas[i] * 0.12 * Math.log1p(Math.exp((x + 2.5) / 0.12));
        readings.append(
            String.format(Locale.ROOT, "%.2f,%.2f\n", x, density + (step == 14 ? 0.06 : 0)));
      }
      StripDraft draft =
          new StripDraft(
              "TRI-X 400",
              "D-76",
              "1+1",
              minutes[i],
              "20C",
              "small",
              "2026-01-11",
              "calibrated",
              "logH",
              readings.toString(),
              "",
              "",
              "",
              "0.20",
              "");
      wetside
          .sensitometry()
          .keepStrips()
          .keep(new StripReader(Units.METRIC).read(draft).orElseThrow());
    }
  }

  /** Two rolls: one that is only planned, one whose first piece is developed. */
  private void testRolls() {
    KeepTestRolls rolls = wetside.sensitometry().keepTestRolls();
    TestRoll roll =
        new TestRollReader(Units.METRIC)
            .require(
                new TestRollDraft(
                    "TRI-X 400",
                    "400",
                    "D-76",
                    "1+1",
                    "20C",
                    "small",
                    "1/60@f8",
                    "8min",
                    "",
                    "",
                    "",
                    "",
                    ""));
    rolls.begin(roll);
    long second = rolls.begin(roll).id();
    for (TestStep step : TestStep.values()) {
      if (step.piece() == 0 && step != TestStep.RESULT) {
        rolls.tick(second, step, "as on the sheet");
      }
    }
    rolls.develop(
        second,
        1,
        new PieceDeveloped(Duration.ofMinutes(6), Optional.empty(), LocalDate.of(2026, 1, 12)),
        "");
  }

  @AfterAll
  void close() {
    browsing.close();
    server.close();
    wetside.close();
  }

  /** All of it on one sheet, opened once: a browser takes longer to open a page than to look. */
  @ParameterizedTest
  @MethodSource("pages")
  void everyPageHolds(String path) {
    try (Page page = browsing.page(1280, 800)) {
      AtomicLong bytes = PageLook.weighed(page);
      Response answer = page.navigate(at(path));
      assertThat(answer).isNotNull();
      PageLook.settled(page);
      assertThat(bytes.get()).isBetween(1L, PageLook.FIRST_VIEW_BYTES);
      PageLook.itOpensWithASentence(page, path);
      PageLook.nothingScrollsSideways(page, path, WIDTHS);
      page.setViewportSize(390, 844);
      PageLook.everyTargetIsLargeEnough(page, path);
      // Each ground and each shape once: a small sheet by day, a wide one by night.
      page.setViewportSize(320, 800);
      PageLook.axeFindsNothing(page, path + " by day, 320 px");
      page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
      page.setViewportSize(1366, 800);
      PageLook.contrastHoldsByNight(page, path + " by night, 1366 px");
    }
  }

  private String at(String path) {
    return server.address().resolve(path).toString();
  }
}
