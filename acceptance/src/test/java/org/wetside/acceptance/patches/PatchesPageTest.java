package org.wetside.acceptance.patches;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicLong;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.acceptance.Browsing;
import org.wetside.app.Wetside;
import org.wetside.app.density.Calibrate;
import org.wetside.app.density.TabletLines;
import org.wetside.core.instrument.Calibration;
import org.wetside.core.instrument.Instrument;
import org.wetside.core.instrument.InstrumentKind;
import org.wetside.core.instrument.StepTablet;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/**
 * The page of a picture as a person uses it. The picture holds twelve steps side by side, each 200
 * pixels wide; pixels follow 60000 · 10^−D, densities 0.05, 0.20 … 1.70.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PatchesPageTest {
  private static final long FIRST_VIEW_BYTES = 100_000;
  private static final String HERE = "/curves/patches/strip.tif";

  private Path home;
  private Browsing browsing;
  private Wetside wetside;
  private WebServer server;

  @BeforeAll
  void open(@TempDir Path folder) throws IOException {
    home = folder;
    wetside = Wetside.open(home, Clock.systemUTC());
    var here = wetside.densitometry();
    StringBuilder tablet = new StringBuilder();
    StringBuilder seen = new StringBuilder();
    for (int step = 1; step <= 12; step++) {
      tablet.append(String.format(Locale.ROOT, "%d,%.2f%n", step, density(step)));
      seen.append(step).append(',').append(pixel(step)).append('\n');
    }
    here.keepTablets().put(new StepTablet("T12", "sheet", TabletLines.parse(tablet.toString())));
    here.keepInstruments().add(new Instrument("flatbed", InstrumentKind.SCANNER, ""));
    here.calibrate()
        .by(
            new Calibrate.Wish(
                "flatbed",
                "T12",
                LocalDate.of(2026, 1, 10),
                Calibration.Method.FORMULA,
                seen.toString(),
                ""));
    server = WebServer.start(wetside, WebOptions.onPort(0));
    browsing = new Browsing();
  }

  @BeforeEach
  void freshPicture() throws IOException {
    wetside.densitometry().keepPictures().remove("strip.tif");
    Files.createDirectories(home.resolve("pictures"));
    write("strip.tif", 0);
    wetside.densitometry().keepPictures().declare("strip.tif", true);
  }

  /** Grain is a share of each pixel, spread evenly, the same in every run. */
  private void write(String name, double grain) throws IOException {
    SplittableRandom chance = new SplittableRandom(7);
    BufferedImage image = new BufferedImage(2400, 800, BufferedImage.TYPE_USHORT_GRAY);
    for (int x = 0; x < 2400; x++) {
      for (int y = 0; y < 800; y++) {
        double value = pixel(x / 200 + 1) * (1 + grain * (chance.nextDouble() - 0.5));
        image.getRaster().setSample(x, y, 0, (int) Math.min(65535, Math.round(value)));
      }
    }
    ImageIO.write(image, "tiff", home.resolve("pictures/" + name).toFile());
  }

  @AfterAll
  void close() {
    browsing.close();
    server.close();
    wetside.close();
  }

  private static double density(int step) {
    return 0.05 + 0.15 * (step - 1);
  }

  private static int pixel(int step) {
    return (int) Math.round(60000 * Math.pow(10, -density(step)));
  }

  private String at(String path) {
    return server.address().resolve(path).toString();
  }

  private static String cell(Page page, String name) {
    return page.locator("[name=" + name + "]").inputValue();
  }

  private static void tabTo(Page page, String selector) {
    for (int i = 0; i < 200; i++) {
      page.keyboard().press("Tab");
      if ((boolean) page.evaluate("s => document.activeElement.matches(s)", selector)) {
        return;
      }
    }
    throw new AssertionError("no Tab leads to " + selector);
  }

  @Test
  void aPatchIsDrawnMovedSizedDividedAndMeasuredByKeyboardAlone() {
    try (Page page = browsing.page(1280, 800)) {
      page.navigate(at(HERE));
      tabTo(page, "#add");
      page.keyboard().press("Enter");
      assertThat(page.locator("#told")).hasText("Patch 1 added.");
      assertThat(cell(page, "x0")).isEqualTo("1150");
      for (int i = 0; i < 96; i++) {
        page.keyboard().press("ArrowLeft");
      }
      assertThat(cell(page, "x0")).as("12 pixels a press, not past the edge").isEqualTo("0");
      page.keyboard().press("Alt+ArrowRight");
      assertThat(cell(page, "x0")).isEqualTo("1");
      page.keyboard().press("Alt+ArrowLeft");
      for (int i = 0; i < 195; i++) {
        page.keyboard().press("Shift+ArrowRight");
      }
      assertThat(cell(page, "width0")).isEqualTo("2400");
      assertThat(cell(page, "height0")).isEqualTo("100");

      page.locator("summary:has-text('Divide a patch')").focus();
      page.keyboard().press("Enter");
      page.keyboard().press("Tab");
      page.keyboard().type("1");
      page.keyboard().press("Tab");
      page.keyboard().type("12");
      page.keyboard().press("Tab");
      page.keyboard().type("1");
      page.keyboard().press("Tab");
      page.keyboard().press("Enter");
      assertThat(page.locator("[name=label11]")).hasValue("12");
      assertThat(page.locator("#drawn [data-patch]")).hasCount(12);

      page.locator("#instrument").focus();
      page.keyboard().type("flatbed");
      tabTo(page, "button[value=read]");
      page.keyboard().press("Enter");
      assertThat(page.locator("h1")).hasText("12 of 12 read as densities by flatbed.");
      List<String> densities = page.locator("#readings tbody tr td:nth-child(6)").allInnerTexts();
      List<String> expected = new ArrayList<>();
      for (int step = 1; step <= 12; step++) {
        expected.add(String.format(Locale.ROOT, "%.3f", density(step)));
      }
      assertThat(densities).isEqualTo(expected);
    }
  }

  @Test
  void deleteTakesAPatchAwayAndPlusShowsItCloser() {
    try (Page page = browsing.page(1280, 800)) {
      page.navigate(at(HERE));
      tabTo(page, "#add");
      page.keyboard().press("Enter");
      page.keyboard().press("+");
      assertThat(page.locator("#picture")).hasAttribute("viewBox", "600 200 1200 400");
      page.keyboard().press("-");
      assertThat(page.locator("#picture")).hasAttribute("viewBox", "0 0 2400 800");
      page.keyboard().press("Delete");
      assertThat(page.locator("#told")).hasText("Patch 1 taken away.");
      assertThat(page.locator("#drawn [data-patch]")).hasCount(0);
      assertThat(cell(page, "label0")).isEmpty();
    }
  }

  @Test
  void aPatchIsDrawnByDragMovedAndSizedAtItsCorner() {
    try (Page page = browsing.page(1280, 800)) {
      page.navigate(at(HERE));
      Locator picture = page.locator("#picture");
      picture.scrollIntoViewIfNeeded();
      BoundingBox box = picture.boundingBox();
      double scale = 2400 / box.width;
      drag(page, box, scale, 240, 200, 540, 500);
      near(cell(page, "x0"), 240, scale);
      near(cell(page, "y0"), 200, scale);
      near(cell(page, "width0"), 300, 2 * scale);
      drag(page, box, scale, 300, 300, 900, 350);
      near(cell(page, "x0"), 840, 2 * scale);
      near(cell(page, "y0"), 250, 2 * scale);
      drag(page, box, scale, 1140, 550, 1240, 450);
      near(cell(page, "width0"), 400, 3 * scale);
      near(cell(page, "height0"), 200, 3 * scale);
      near(cell(page, "x0"), 840, 2 * scale);

      page.locator("[name=x0]").fill("17");
      assertThat(page.locator("#drawn rect.top")).hasAttribute("x", "17");
    }
  }

  private static void drag(
      Page page, BoundingBox box, double scale, int x, int y, int toX, int toY) {
    page.mouse().move(box.x + x / scale, box.y + y / scale);
    page.mouse().down();
    page.mouse().move(box.x + (x + toX) / 2.0 / scale, box.y + (y + toY) / 2.0 / scale);
    page.mouse().move(box.x + toX / scale, box.y + toY / scale);
    page.mouse().up();
  }

  private static void near(String value, int expected, double within) {
    assertThat((double) Integer.parseInt(value))
        .isCloseTo(expected, org.assertj.core.api.Assertions.within(within + 1));
  }

  @Test
  void withoutScriptsTheFieldsAloneMeasure() {
    try (Page page = browsing.pageWithoutScripts(390, 844)) {
      page.navigate(at(HERE));
      page.locator("[name=label0]").fill("base");
      page.locator("[name=x0]").fill("20");
      page.locator("[name=y0]").fill("20");
      page.locator("[name=width0]").fill("100");
      page.locator("[name=height0]").fill("100");
      page.locator("#instrument").selectOption("flatbed");
      page.locator("button[value=read]").click();
      assertThat(page.locator("h1")).hasText("1 of 1 read as densities by flatbed.");
      assertThat(page.locator("#readings")).containsText("0.050");
      assertThat(page.locator("#plate-keys")).isHidden();
      assertThat(page.locator("#drawn rect.top")).hasAttribute("x", "20");
    }
  }

  @Test
  void theFirstViewIsLightItsTargetsLargeAndAxeFindsNothing() throws IOException {
    write("grain.tif", 0.5);
    wetside.densitometry().keepPictures().declare("grain.tif", true);
    AtomicLong bytes = new AtomicLong();
    try (Page page = browsing.page(1280, 800)) {
      page.onRequestFinished(
          request ->
              bytes.addAndGet(
                  request.sizes().responseBodySize + request.sizes().responseHeadersSize));
      page.navigate(at("/curves/patches/grain.tif"));
      page.waitForLoadState();
      page.evaluate("() => document.fonts.ready.then(() => true)");
    }
    assertThat(bytes.get()).isBetween(1L, FIRST_VIEW_BYTES);
    for (int width : new int[] {320, 390, 899, 1280, 1600}) {
      ColorScheme scheme = width < 900 ? ColorScheme.LIGHT : ColorScheme.DARK;
      try (Page page = browsing.page(width, 844, scheme)) {
        page.navigate(at(HERE));
        page.locator("#add").click();
        assertThat((int) page.evaluate("() => document.documentElement.scrollWidth"))
            .as("at " + width)
            .isLessThanOrEqualTo(width);
        Object small =
            page.evaluate(
                "() => [...document.querySelectorAll('button, select, .btn,"
                    + " input:not([type=hidden]):not([type=checkbox]), .grip')]"
                    + ".filter(e => e.getBoundingClientRect().height > 0)"
                    + ".filter(e => e.getBoundingClientRect().height < 47.5)"
                    + ".map(e => e.outerHTML.slice(0, 80))");
        assertThat((List<?>) small).as("at " + width).isEmpty();
        assertThat(
                new AxeBuilder(page)
                    .analyze().getViolations().stream()
                        .map(rule -> rule.getId() + " " + rule.getNodes()))
            .as(scheme + " at " + width)
            .isEmpty();
      }
    }
  }
}
