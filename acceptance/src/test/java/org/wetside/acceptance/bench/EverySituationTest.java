package org.wetside.acceptance.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.wetside.acceptance.Browsing;

/**
 * What holds for the Bench in every situation: no finding by axe, by day and night, on a phone and
 * a laptop; no sideways scroll; targets for wet hands.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EverySituationTest {
  private static final int[] WIDTHS = {320, 390, 600, 768, 899, 900, 1280, 1600};

  /**
   * Every control that can be seen and is smaller than 96 px one way or the other. No exception:
   * the Bench has no links in a sentence.
   */
  private static final String SMALL_TARGETS =
      """
      () => [...document.querySelectorAll('#sheet button, #sheet a, #sheet input, #sheet select')]
        .map(e => [e, e.getBoundingClientRect()])
        .filter(([e, box]) => box.width > 0 && box.height > 0)
        .filter(([e, box]) => box.width < 95.5 || box.height < 95.5)
        .map(([e, box]) => `${e.textContent}: ${Math.round(box.width)} x ${Math.round(box.height)}`)
      """;

  @TempDir Path homes;
  private Browsing browsing;

  @BeforeAll
  void open() {
    browsing = new Browsing();
  }

  @AfterAll
  void close() {
    browsing.close();
  }

  @ParameterizedTest
  @EnumSource
  void isAccessibleAndLargeEnough(Situation situation) {
    SoftAssertions holds = new SoftAssertions();
    try (ReadyRun ready = new ReadyRun(homes.resolve(situation.name()))) {
      situation.prepare(ready);
      // Each ground and each shape once: a small sheet by day, a wide one by night.
      try (Page page = browsing.page(320, 640, ColorScheme.LIGHT)) {
        situation.show(ready, page);
        judge(holds, page, situation + " by day, 320 px");
        scrollsDownOnly(holds, page, situation + " by day");
      }
      try (Page page = browsing.page(1366, 768, ColorScheme.DARK)) {
        situation.show(ready, page);
        judge(holds, page, situation + " by night, 1366 px");
      }
    }
    holds.assertAll();
  }

  /** The checks above can fail: a small key and a picture without words are found. */
  @Test
  void whatIsSmallOrWithoutWordsIsFound() {
    try (ReadyRun ready = new ReadyRun(homes.resolve("faulty"));
        Page page = browsing.page(320, 640)) {
      Situation.READY.show(ready, page);
      page.evaluate(
          "() => { const key = document.createElement('button'); key.textContent = 'tiny';"
              + " const picture = document.createElement('img'); picture.src = '/none.png';"
              + " document.getElementById('sheet').append(key, picture); }");
      assertThat(page.evaluate(SMALL_TARGETS).toString()).contains("tiny: ");
      assertThat(findings(page)).anyMatch(finding -> finding.startsWith("image-alt"));
    }
  }

  private static void judge(SoftAssertions holds, Page page, String where) {
    holds.assertThat(findings(page)).as(where).isEmpty();
    holds.assertThat(page.locator("#sheet button:visible").count()).as(where).isPositive();
    holds.assertThat((List<?>) page.evaluate(SMALL_TARGETS)).as(where).isEmpty();
  }

  private static List<String> findings(Page page) {
    return new AxeBuilder(page)
        .analyze().getViolations().stream()
            .map(rule -> rule.getId() + " " + rule.getNodes())
            .toList();
  }

  private static void scrollsDownOnly(SoftAssertions holds, Page page, String where) {
    for (int width : WIDTHS) {
      page.setViewportSize(width, 768);
      int wide = (int) page.evaluate("() => document.documentElement.scrollWidth");
      holds.assertThat(wide).as(where + " scrolled at " + width).isLessThanOrEqualTo(width);
    }
  }
}
