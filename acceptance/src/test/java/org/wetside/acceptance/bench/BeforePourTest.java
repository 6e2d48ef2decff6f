package org.wetside.acceptance.bench;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.acceptance.Browsing;
import org.wetside.core.run.Happening;
import org.wetside.core.run.PassedOver;

/** What a person goes through at the Bench before the first pour, in a real browser. */
class BeforePourTest {
  /** A second press of one key within 0.7 s is one press. */
  private static final double ONE_KEY_ONCE_MILLIS = 760;

  private ReadyRun ready;
  private Browsing browsing;

  @BeforeEach
  void open(@TempDir Path home) {
    ready = new ReadyRun(home);
    browsing = new Browsing();
  }

  @AfterEach
  void close() {
    browsing.close();
    ready.close();
  }

  /** On a device that was heard before. */
  private Page bench(int width, int height) {
    Page page = browsing.page(width, height);
    page.addInitScript("localStorage.setItem('wetside.heard', new Date().toISOString())");
    page.navigate(ready.address());
    assertThat(page.locator("#act-words")).containsText("Is the film in the tank?");
    return page;
  }

  private static void press(Page page, String key) {
    page.keyboard().press(key);
    page.waitForTimeout(ONE_KEY_ONCE_MILLIS);
  }

  private Happening.Started firstPour() {
    return (Happening.Started)
        ready.wetside.bench().look(ready.run).state().events().stream()
            .map(event -> event.what())
            .filter(Happening.Started.class::isInstance)
            .findFirst()
            .orElseThrow();
  }

  @Test
  void everythingIsGoneThroughWithOneKeyAtATime() {
    Page page = bench(1280, 800);
    Locator act = page.locator("#act-words");
    press(page, "Space");
    assertThat(act).containsText("Close the tank");
    for (int tick = 0; tick < 5; tick++) {
      press(page, "Space");
    }
    press(page, "Escape");
    assertThat(act).containsText("With care");
    assertThat(page.locator(".rows"))
        .containsText("fix: no caution on file: read the maker's safety data sheet first");
    press(page, "Space");
    assertThat(act).containsText("Bath temperatures");
    press(page, "Space");
    assertThat(act).containsText("Reading");
    press(page, "Space");
    assertThat(page.locator(".rows .done").first()).containsText("Developer, bottle D: 20 °C");
    press(page, "Escape");
    assertThat(act).containsText("The bottles");
    assertThat(page.locator(".rows .now")).containsText("test first");
    press(page, "Space");
    assertThat(act).containsText("Enough developer?");
    press(page, "Space");
    assertThat(act).containsText("Precious film");
    press(page, "Space");
    assertThat(page.locator(".rows .done")).containsText("leader test of bottle D passed");
    press(page, "2");
    assertThat(act).containsText("Developer in");
    press(page, "Space");
    assertThat(page.locator("#sheet.ready")).hasCount(0);
    assertThat(firstPour().ticked()).contains("reel-dry", "lid-locked").doesNotContain("tug");
    assertThat(firstPour().reason()).isEqualTo("The same baths worked tonight");
    assertThat(firstPour().passedOver())
        .extracting(PassedOver::text)
        .contains("One tug at the lid: it holds", "Fixer, bottle F: not read");
    assertThat(ready.wetside.listBottles().ledger("D"))
        .extracting(line -> line.what().word())
        .contains("leader test passed");
  }

  @Test
  void whatWasAnsweredOutlivesAReload() {
    Page page = bench(390, 844);
    press(page, "Space");
    press(page, "Space");
    page.reload();
    assertThat(page.locator("#act-words")).containsText("Close the tank");
    assertThat(page.locator(".rows .done")).containsText("Reel dry and whole");
  }

  /**
   * Every key that can be pressed is 96 px and more in both directions, without sideways scroll.
   */
  @ParameterizedTest
  @CsvSource({"1280, 800", "390, 844", "320, 568"})
  void targetsAreLarge(int width, int height) {
    Page page = bench(width, height);
    assertLarge(page);
    press(page, "d");
    assertLarge(page);
    press(page, "Escape");
    press(page, "Space");
    assertLarge(page);
    press(page, "a");
    press(page, "w");
    press(page, "k");
    assertLarge(page);
  }

  private static void assertLarge(Page page) {
    Object smallest =
        page.evaluate(
            "() => Math.min(...[...document.querySelectorAll('#sheet button.key')]"
                + ".map(k => k.getBoundingClientRect())"
                + ".flatMap(r => [r.width, r.height]))");
    assertThat(((Number) smallest).doubleValue()).isGreaterThanOrEqualTo(96);
    assertThat(page.evaluate("document.documentElement.scrollWidth <= innerWidth")).isEqualTo(true);
  }

  @Test
  void inTheDarkThePageIsBlackAndTheWordsComeInOrder() {
    Page page = bench(390, 844);
    press(page, "d");
    press(page, "b");
    assertThat(page.locator("#panel")).containsText("Phone and watch out of the bag");
    assertThat(page.locator("#keys")).containsText("Lights out");
    press(page, "Space");
    assertBlack(page);
    press(page, "PageDown");
    press(page, "w");
    assertBlack(page);
    press(page, "Escape");
    assertBlack(page);
    page.mouse().click(200, 400);
    page.waitForTimeout(ONE_KEY_ONCE_MILLIS);
    assertBlack(page);
    // two reels of three acts; core, lid, tug, light
    for (int act = 2; act < 11; act++) {
      press(page, "Space");
    }
    assertThat(page.locator("#act-words")).containsText("With care");
    assertThat(page.locator("html.lights-out")).hasCount(0);
    press(page, "a");
    press(page, "Space");
    assertThat(page.locator("#sheet.ready")).hasCount(0);
    assertThat(firstPour().ticked())
        .containsExactlyInAnyOrder(
            "reel-dry", "leader-square", "film-on-edges", "centre-core", "lid-locked", "tug");
  }

  @Test
  void escapeTwiceLightsTheScreen() {
    Page page = bench(1280, 800);
    press(page, "d");
    assertThat(page.locator("#keys")).containsText("Lights out");
    press(page, "Space");
    press(page, "Escape");
    assertBlack(page);
    press(page, "Escape");
    assertThat(page.locator("#act-words")).containsText("Is the film in the tank?");
    assertThat(page.locator("html.lights-out")).hasCount(0);
  }

  /**
   * Who goes by sight in the light has nothing but the voice in the dark; afterwards it is quiet.
   */
  @Test
  void inTheDarkTheVoiceSpeaksWhateverWasChosen() {
    Page page = browsing.page(390, 844);
    page.addInitScript(
        "localStorage.setItem('wetside.heard', new Date().toISOString());"
            + " localStorage.setItem('wetside.voice', 'none'); window.clips = 0;"
            + " const start = AudioBufferSourceNode.prototype.start;"
            + " AudioBufferSourceNode.prototype.start = function (...when) {"
            + " window.clips += 1; return start.apply(this, when); };");
    page.navigate(ready.address());
    press(page, "d");
    assertThat(page.locator("#keys")).containsText("Lights out");
    press(page, "Space");
    assertBlack(page);
    page.waitForFunction("() => window.clips > 0");
    press(page, "Escape");
    press(page, "Escape");
    assertThat(page.locator("html.lights-out")).hasCount(0);
    int after = (int) page.evaluate("window.clips");
    press(page, "Escape");
    press(page, "w");
    assertThat(page.locator("#act-words")).containsText("Where");
    assertThat(page.evaluate("window.clips")).isEqualTo(after);
  }

  private static void assertBlack(Page page) {
    Object lit =
        page.evaluate(
            "() => [...document.querySelectorAll('html, body, body *')].filter(el => {"
                + " const s = getComputedStyle(el);"
                + " const black = c => c === 'rgb(0, 0, 0)';"
                + " return !black(s.backgroundColor) || !black(s.color) || !black(s.borderTopColor)"
                + " || s.animationName !== 'none' || s.cursor !== 'none'"
                + " || s.backgroundImage !== 'none' || s.boxShadow !== 'none'; })"
                + ".map(el => el.tagName + '#' + el.id)");
    assertThat((List<?>) lit).isEmpty();
    assertThat(page.evaluate("document.getAnimations().length")).isEqualTo(0);
    byte[] picture = page.screenshot();
    assertThat(Picture.brightest(picture)).isZero();
  }

  @Test
  void theVoiceLeadsThroughTheDark() {
    Page page = bench(1280, 800);
    Object said =
        page.evaluate(
            "async root => { const {LightsOut} = await import(root + '/bench/lights-out.js');"
                + " const {stages, WORDS} = await import(root + '/bench/panels/dark.js');"
                + " const run = {rolls: [{}, {}], checks: ['centre-core', 'lid-locked'].map(id =>"
                + " ({id, group: 'closing'}))}; const said = [];"
                + " const dark = new LightsOut(stages(run, true), {say: w => said.push(w),"
                + " words: WORDS, done: felt => said.push(felt.join()), left: () => {}});"
                + " dark.begin(); let at = 1000; const go = key => { at += 800;"
                + " const e = new KeyboardEvent('keydown', {key, cancelable: true});"
                + " Object.defineProperty(e, 'timeStamp', {value: at}); dark.key(e); };"
                + " ['x', 'Backspace', 'Enter', 'Escape', 'y'].forEach(go);"
                + " for (let i = 0; i < 9; i++) go(' ');"
                + " const voice = await (await fetch('/voice/en.json')).json();"
                + " const known = new Set(Object.values(voice.words));"
                + " return said.map(w => w + (known.has(w) ? ' (clip)' : '')); }",
            root(page));
    assertThat(said)
        .isEqualTo(
            List.of(
                "Phone and watch out of the bag. Lights out. Press any key to go on. (clip)",
                "Take the reel. Feel that it is dry and whole. (clip)",
                "Take the reel. Feel that it is dry and whole. (clip)",
                "Open the film. Cut the leader square. (clip)",
                "Press escape again and the screen lights up. Is all film covered? (clip)",
                "Open the film. Cut the leader square. (clip)",
                "Wind the film on. It runs on the edges of the reel, never across. (clip)",
                "Next reel. Feel that it is dry and whole. (clip)",
                "Open the film. Cut the leader square. (clip)",
                "Wind the film on. It runs on the edges of the reel, never across. (clip)",
                "Centre core in. (clip)",
                "Lid on. Turn it until it locks. (clip)",
                "One tug at the lid. It holds. (clip)",
                "Lights on when the lid is locked. Then press any key. (clip)",
                "centre-core,lid-locked"));
  }

  private static String root(Page page) {
    String style = page.locator("link[rel=stylesheet]").first().getAttribute("href");
    return style.substring(0, style.lastIndexOf('/'));
  }
}
