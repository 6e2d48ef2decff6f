package org.wetside.acceptance.bench;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.acceptance.Browsing;

/** Keys of one screen: when they act, how they are changed, and a foot switch. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OwnKeysTest {
  private static final double ONE_KEY_ONCE_MILLIS = 760;

  private ReadyRun ready;
  private Browsing browsing;
  private Page page;
  private Locator act;

  @BeforeAll
  void open(@TempDir Path home) {
    ready = new ReadyRun(home);
    browsing = new Browsing();
  }

  @AfterAll
  void close() {
    browsing.close();
    ready.close();
  }

  @BeforeEach
  void atTheBench() {
    page = browsing.page(1280, 800);
    page.addInitScript("localStorage.setItem('wetside.heard', new Date().toISOString())");
    page.navigate(ready.address());
    act = page.locator("#act-words");
    assertThat(act).containsText("Is the film in the tank?");
    press("Escape");
  }

  private void press(String key) {
    page.keyboard().press(key);
    page.waitForTimeout(ONE_KEY_ONCE_MILLIS);
  }

  /** A key as a device sends it that no keyboard layout has. */
  private void send(String key) {
    page.evaluate(
        "key => document.dispatchEvent(new KeyboardEvent('keydown',"
            + " {key, bubbles: true, cancelable: true}))",
        key);
    page.waitForTimeout(ONE_KEY_ONCE_MILLIS);
  }

  private void learnFoot(String key) {
    press("w");
    press("k");
    assertThat(act).containsText("Keys of this screen");
    press("p");
    assertThat(act).containsText("Press the switch");
    send(key);
    assertThat(page.locator("#keys")).containsText("Foot switch: " + key);
    press("Escape");
  }

  @Test
  void aKeyIsChangedAndItsPlaceSaysSo() {
    press("w");
    press("k");
    page.locator("#panel button", new Page.LocatorOptions().setHasText("Where am I?")).click();
    press("q");
    press("Escape");
    assertThat(page.locator("#keys button").first()).hasAttribute("aria-keyshortcuts", "Q");
    press("w");
    assertThat(act).containsText("Developer in");
    page.reload();
    press("Escape");
    press("q");
    assertThat(act).containsText("Where am I?");
  }

  @Test
  void allKeysCanBeTurnedOffAndFingersStillAct() {
    press("w");
    press("k");
    page.locator("#keys button", new Page.LocatorOptions().setHasText("Turn keys off")).click();
    press("Escape");
    assertThat(act).containsText("Keys of this screen");
    page.locator("#keys button", new Page.LocatorOptions().setHasText("Back")).click();
    press("w");
    assertThat(act).containsText("Developer in");
  }

  /** A foot switch may be any key, also one that would press whatever has the focus. */
  @ParameterizedTest
  @ValueSource(strings = {"F13", "F24", "MediaPlayPause", "Enter", "PageDown", "VolumeDown"})
  void aFootSwitchIsLearnedAndDoesTheOneNextStep(String key) {
    learnFoot(key);
    press("l");
    assertThat(act).containsText("Is the film in the tank?");
    page.locator("#keys button").first().focus();
    send(key);
    assertThat(act).containsText("Close the tank");
    send(key);
    assertThat(page.locator(".rows .done")).containsText("Reel dry and whole");
    page.evaluate("sessionStorage.clear()");
  }

  @Test
  void aKeyThatIsHeldDownActsOnce() {
    page.keyboard().down("w");
    page.keyboard().down("w");
    page.waitForTimeout(ONE_KEY_ONCE_MILLIS);
    page.keyboard().down("w");
    page.keyboard().up("w");
    assertThat(act).containsText("Where am I?");
    press("Escape");
    page.locator("#keys button").first().focus();
    page.keyboard().down("Enter");
    page.waitForTimeout(ONE_KEY_ONCE_MILLIS);
    page.keyboard().down("Enter");
    page.keyboard().up("Enter");
    assertThat(act).containsText("Where am I?");
  }

  @Test
  void keysAreSilentWhileAnotherControlHasTheFocus() {
    page.evaluate(
        "() => { const box = document.createElement('input'); box.id = 'another';"
            + " document.body.append(box); box.focus(); }");
    press("w");
    assertThat(act).containsText("Developer in");
    page.evaluate(
        "() => { const key = document.createElement('button'); key.id = 'beside';"
            + " document.body.append(key); key.focus(); }");
    press("w");
    assertThat(act).containsText("Developer in");
    page.locator("#sheet").focus();
    press("w");
    assertThat(act).containsText("Where am I?");
    assertThat(page.locator("#another").inputValue()).isEqualTo("w");
  }
}
