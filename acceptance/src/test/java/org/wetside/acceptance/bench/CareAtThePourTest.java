package org.wetside.acceptance.bench;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.acceptance.Browsing;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Moment;
import org.wetside.core.run.Origin;
import org.wetside.core.run.Phase;

/**
 * Cautions where hands are: before the first pour and at each pour, on sheets of several shapes. An
 * acid stop before an alkaline fixer is warned of (CH-S14 p.106).
 */
class CareAtThePourTest {
  private static final double ONE_KEY_ONCE_MILLIS = 760;

  /** A pour lasts ten seconds; a loaded machine may take its time to say so. */
  private static final double POURED_MILLIS = 40_000;

  private static final String SOUND_OFF =
      "localStorage.setItem('wetside.heard', new Date().toISOString())";

  private ReadyRun ready;
  private Browsing browsing;

  @BeforeEach
  void open(@TempDir Path home) {
    ready = new ReadyRun(home, "some film", "D-76", "SB-1", "TF-3");
    browsing = new Browsing();
  }

  @AfterEach
  void close() {
    browsing.close();
    ready.close();
  }

  private Page bench(int width, int height, ColorScheme scheme) {
    Page page = browsing.page(width, height, scheme);
    page.addInitScript(SOUND_OFF);
    page.navigate(ready.address());
    assertThat(page.locator("#act-words")).not().isEmpty();
    return page;
  }

  private static void press(Page page, String key) {
    page.keyboard().press(key);
    page.waitForTimeout(ONE_KEY_ONCE_MILLIS);
  }

  @Test
  void bathsThatShouldNotMeetAreAskedAboutAndOneKeyPutsTheRinseBetween() {
    Page page = bench(390, 844, ColorScheme.DARK);
    for (int key = 0; key < 7; key++) {
      press(page, "Space");
    }
    assertThat(page.locator("#act-words")).containsText("With care");
    assertThat(page.locator(".rows .warns").first()).containsText("bottle F, TF-3");
    assertThat(page.locator(".rows .warns").first()).containsText("CH-S14");
    picture(page, "care-before-phone-night");
    press(page, "h");
    assertThat(page.locator(".b-panel.care")).containsText("hydroquinone: harmful if swallowed");
    assertThat(page.locator(".b-panel.care")).containsText("never together: ");
    picture(page, "care-full-phone-night");
    press(page, "Escape");
    assertThat(page.locator(".words-row")).containsText("Rinse before the fixer");
    page.keyboard().press("1");
    page.waitForURL("**/bench/2");
    assertThat(page.locator("#act-words")).not().isEmpty();
    assertThat(page.locator("#act-words")).not().containsText("tank");
    assertThat(page.locator(".rows .warns")).hasCount(0);
    assertThat(ready.wetside.bench().look(1).state().phase()).isEqualTo(Phase.ABANDONED);
    assertThat(ready.wetside.bench().look(2).state().plan().steps().get(2).kind().word())
        .isEqualTo("rinse");
  }

  @Test
  void theCautionsOfTheBathStandThereWhileItIsPouredAndCoverNothing() {
    List<Page> pages =
        List.of(
            bench(390, 844, ColorScheme.LIGHT),
            bench(320, 640, ColorScheme.DARK),
            bench(1280, 800, ColorScheme.LIGHT),
            bench(1366, 768, ColorScheme.DARK),
            bench(844, 390, ColorScheme.LIGHT));
    SoftAssertions fits = new SoftAssertions();
    for (Page page : pages) {
      press(page, "Escape");
      assertThat(page.locator("#care")).containsText("Gloves, no dust, ventilate");
      judge(fits, page, "#care", "ready");
    }
    ready.send(0, new Happening.Started(List.of(), true));
    Locator first = pages.get(0).locator("#care-low");
    assertThat(first).isVisible();
    assertThat(first).containsText("Gloves, no dust, ventilate");
    assertThat(first).isHidden(new LocatorAssertions.IsHiddenOptions().setTimeout(POURED_MILLIS));
    assertThat(pages.get(0).locator(".b-future")).isVisible();

    ready.send(1, new Happening.StepBegun(Moment.FULL, Origin.PRESSED, true));
    // Waiting for the hand that pours the fixer: two minutes in which every sheet can be measured.
    ready.send(1, new Happening.WaitingBegun(Origin.PRESSED));
    for (Page page : pages) {
      assertThat(page.locator("#care-low")).isVisible();
      assertThat(page.locator("#care-low .warns"))
          .containsText("Acid stop before an alkaline fixer: rinse in plain water between them");
      judge(fits, page, "#care-low", "waiting");
    }
    fits.assertAll();
  }

  /** Act, caution and keys lie in the sheet, one above the other, none over another. */
  private static void judge(SoftAssertions fits, Page page, String care, String when) {
    String name =
        "care-" + when + "-" + page.viewportSize().width + "x" + page.viewportSize().height;
    page.waitForTimeout(300);
    picture(page, name);
    Object wrong =
        page.evaluate(
            """
            care => {
              const box = id => document.querySelector(id).getBoundingClientRect();
              const said = box(care), keys = box('#keys'), tape = box('#tape'), act = box('#act-words'), seconds = box('.b-seconds');
              const over = (a, b) => a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 1 && b.top < a.bottom - 1;
              const found = [];
              if (said.width === 0 || said.height === 0) found.push('not shown');
              if (over(said, keys)) found.push('over the keys');
              if (over(said, tape)) found.push('over the tape');
              if (over(said, act)) found.push('over the act');
              if (over(act, tape)) found.push('act over the tape');
              if (over(seconds, tape)) found.push('seconds over the tape');
              if (keys.bottom > innerHeight + 1) found.push('keys below the screen by ' + (keys.bottom - innerHeight));
              if (document.documentElement.scrollWidth > innerWidth) found.push('scrolls sideways');
              return found.join(', ');
            }
            """,
            care);
    fits.assertThat(wrong).as(name).isEqualTo("");
  }

  private static void picture(Page page, String name) {
    String pictures = System.getProperty("pictures", "");
    if (!pictures.isEmpty()) {
      page.screenshot(new Page.ScreenshotOptions().setPath(Path.of(pictures, name + ".png")));
    }
  }
}
