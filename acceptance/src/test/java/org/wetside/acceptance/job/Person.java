package org.wetside.acceptance.job;

import com.microsoft.playwright.Page;

/** How somebody works a page: with a pointer, or with the keyboard alone. */
abstract class Person {
  final Page page;

  Person(Page page) {
    this.page = page;
  }

  /** Puts text into a field. */
  abstract void type(String field, String text);

  /** Ticks a box. */
  abstract void tick(String field, String value);

  /** Presses a button by its words. */
  abstract void press(String words);

  /** With mouse or finger. */
  static final class WithPointer extends Person {
    WithPointer(Page page) {
      super(page);
    }

    @Override
    void type(String field, String text) {
      page.locator("[name='" + field + "']").first().fill(text);
    }

    @Override
    void tick(String field, String value) {
      page.locator("[name='" + field + "'][value='" + value + "']").check();
    }

    @Override
    void press(String words) {
      page.locator("button", new Page.LocatorOptions().setHasText(words)).first().click();
    }
  }

  /** Tab, letters, Space and Enter; the pointer is never touched. */
  static final class WithKeyboard extends Person {
    private static final int MOST_TABS = 80;

    WithKeyboard(Page page) {
      super(page);
    }

    @Override
    void type(String field, String text) {
      tabTo("el.name === '" + field + "'");
      page.keyboard().press("Control+A");
      page.keyboard().type(text);
    }

    @Override
    void tick(String field, String value) {
      tabTo("el.name === '" + field + "' && el.value === '" + value + "'");
      page.keyboard().press("Space");
    }

    @Override
    void press(String words) {
      tabTo("el.tagName === 'BUTTON' && el.textContent.trim().startsWith('" + words + "')");
      page.evaluate("window.pressedHere = true");
      page.keyboard().press("Enter");
      page.waitForFunction(
          "() => window.pressedHere === undefined && document.readyState === 'complete'");
    }

    private void tabTo(String wanted) {
      String script =
          "() => { const el = document.activeElement; return el !== null && " + wanted + "; }";
      for (int i = 0; i < MOST_TABS; i++) {
        page.keyboard().press("Tab");
        if (Boolean.TRUE.equals(page.evaluate(script))) {
          return;
        }
      }
      throw new AssertionError("the keyboard does not reach what was wanted: " + wanted);
    }
  }
}
