package org.wetside.acceptance.look;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.AxeResults;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;

/** What is looked at on a page that stands open in a browser. */
final class PageLook {
  /** What the first view of a page may weigh over the wire. */
  static final long FIRST_VIEW_BYTES = 100_000;

  private static final String SMALL =
      "() => [...document.querySelectorAll('button, select, textarea, .btn, nav a,"
          + " input:not([type=hidden]):not([type=checkbox]):not([type=radio])')]"
          + ".filter(e => e.offsetParent !== null)"
          + ".filter(e => e.getBoundingClientRect().height < 47.5)"
          + ".map(e => e.outerHTML.slice(0, 80))";

  private PageLook() {}

  static void axeFindsNothing(Page page, String as) {
    AxeResults results = new AxeBuilder(page).analyze();
    assertThat(results.getViolations().stream().map(rule -> rule.getId() + " " + rule.getNodes()))
        .as(as)
        .isEmpty();
  }

  /** By night nothing but the colours is another. */
  static void contrastHoldsByNight(Page page, String as) {
    AxeResults results = new AxeBuilder(page).withRules(List.of("color-contrast")).analyze();
    assertThat(results.getViolations().stream().map(rule -> rule.getId() + " " + rule.getNodes()))
        .as(as)
        .isEmpty();
  }

  static void nothingScrollsSideways(Page page, String as, int... widths) {
    for (int width : widths) {
      page.setViewportSize(width, 800);
      int wide = (int) page.evaluate("() => document.documentElement.scrollWidth");
      assertThat(wide).as(as + " at " + width + " px").isLessThanOrEqualTo(width);
    }
  }

  static void everyTargetIsLargeEnough(Page page, String as) {
    assertThat((List<?>) page.evaluate(SMALL)).as(as).isEmpty();
  }

  /** One heading is seen; it is a sentence, a question, or at the Bench the act in words. */
  static void itOpensWithASentence(Page page, String as) {
    Locator headings = page.locator("h1:visible");
    assertThat(headings.count()).as(as).isEqualTo(1);
    String said = headings.innerText().strip();
    assertThat(said).as(as).isNotEmpty();
    if (!"act-words".equals(headings.getAttribute("id"))) {
      assertThat(said).as(as).matches("(?s).*[.?]");
    }
  }

  /** Begins to count what comes over the wire. */
  static AtomicLong weighed(Page page) {
    AtomicLong bytes = new AtomicLong();
    page.onRequestFinished(
        request ->
            bytes.addAndGet(
                request.sizes().responseBodySize + request.sizes().responseHeadersSize));
    return bytes;
  }

  /** Waits until all of it is there. */
  static void settled(Page page) {
    page.waitForLoadState();
    page.evaluate("() => document.fonts.ready.then(() => true)");
  }
}
