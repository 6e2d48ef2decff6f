package org.wetside.acceptance.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ReducedMotion;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.acceptance.Browsing;
import org.wetside.app.Wetside;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/**
 * Modules of the Bench page, loaded from the real server into a real browser and asked directly.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BenchModulesTest {
  private static final String RUN =
      """
      const t0 = Date.UTC(2026, 0, 14, 19, 0, 0);
      const s = n => t0 + n * 1000;
      const cue = (id, at, act, text, count = 0, seconds = 0, step = 0) =>
        ({id, at: s(at), step, act, count, seconds, text: 'Double: ' + text, speech: text});
      const run = {run: 7, phase: 'running', tank: 'Double', now: t0, volumeMl: 600, waitingUntil: null, after: null,
        steps: [{index: 0, kind: 'developer', word: 'Developer', bottle: 'D', lidStaysOn: true, beginAt: s(0), endAt: s(550)},
                {index: 1, kind: 'stop bath', word: 'Stop bath', bottle: 'S', lidStaysOn: true, beginAt: s(550), endAt: s(620)}],
        cues: [cue('a', 0, 'pour in', 'Developer in, bottle D'), cue('b', 10, 'agitate', 'Agitate 5×', 5, 7.5),
               cue('c', 17.5, 'tap', 'Tap the tank'), cue('d', 17.5, 'rest', 'Rest until 1:00'), cue('e', 535, 'drain', 'Drain'),
               cue('f', 538, 'back to bottle', 'Developer back to bottle D'), cue('g', 546, 'cap only', 'Cap only, not the lid', 0, 0, 1),
               cue('h', 550, 'pour in', 'Stop bath in, bottle S', 0, 0, 1)]};
      """;

  private Browsing browsing;
  private Wetside wetside;
  private WebServer server;
  private Page page;

  @BeforeAll
  void open(@TempDir Path home) {
    wetside = Wetside.open(home, Clock.systemUTC());
    server = WebServer.start(wetside, WebOptions.onPort(0));
    browsing = new Browsing();
    page = browsing.page(1280, 800);
    page.navigate(server.address().resolve("/marks").toString());
  }

  @AfterAll
  void close() {
    browsing.close();
    server.close();
    wetside.close();
  }

  @ParameterizedTest
  @CsvSource({
    "0, down, 0:00",
    "59990, down, 0:59",
    "59010, up, 1:00",
    "60000, up, 1:00",
    "541000, down, 9:01",
    "3840000, down, 1:04:00",
    "-5000, down, 0:00",
    "5999.9999, down, 0:06"
  })
  void aSpanIsWrittenAsAClockIsRead(double ms, String rounding, String written) {
    assertThat(ask("times.js", "m.span(" + ms + ", '" + rounding + "')")).isEqualTo(written);
  }

  @Test
  void temperaturesAndMovesHaveATrueMinus() {
    assertThat(ask("units.js", "m.degrees(-0.34)")).isEqualTo("−0.3");
    assertThat(ask("times.js", "m.moved(-10000)")).isEqualTo("−0:10");
    assertThat(ask("times.js", "m.moved(25000)")).isEqualTo("+0:25");
  }

  /** As on a device where °F and fluid ounces were chosen; what is sent stays in °C. */
  @Test
  void theBenchShowsTheChosenUnits() {
    Object shown =
        page.evaluate(
            "async root => { const chosen = document.documentElement.dataset;"
                + " chosen.scale = 'fahrenheit'; chosen.measure = 'us_fluid_ounces';"
                + " const m = await import(root + '/bench/units.js?chosen');"
                + " delete chosen.scale; delete chosen.measure;"
                + " return [m.degrees(20), m.DEGREE_SIGN, m.volume(600),"
                + " m.celsiusOf(m.shownFrom(20.3)).toFixed(6)].join(' '); }",
            root());
    assertThat(shown).isEqualTo("68.0 °F 20.3 fl oz 20.300000");
  }

  /** On this machine nothing is missing; over an open line the page says what is. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "window | 0 |",
        "{isSecureContext: false, navigator: {}} | 4 | hold the screen awake",
        "{isSecureContext: false, navigator: {wakeLock: {}, serviceWorker: {}}} | 4 | Do not reload",
        "{isSecureContext: true, navigator: {wakeLock: {}}} | 2 | Do not reload",
        "{isSecureContext: true, navigator: {serviceWorker: {}}} | 2 | cue track",
        "{isSecureContext: true, navigator: {wakeLock: {}, serviceWorker: {}}} | 0 |",
      })
  void aPageSaysWhatItLacks(String here, int sentences, @Nullable String word) {
    List<?> said = (List<?>) ask("missing.js", "m.whatIsMissing(" + here + ")");
    assertThat(said).hasSize(sentences);
    assertThat(said.toString()).contains(word == null ? "" : word);
  }

  @Test
  void everyInstantOfASnapshotBecomesANumber() {
    Object read =
        ask(
            "snapshot.js",
            "m.readRun('{\"now\":\"2026-01-14T19:13:34.120Z\",\"name\":\"2026-01-14\"}')");
    assertThat(read.toString()).contains("now=1.76841801412E12", "name=2026-01-14");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "5     | Developer in,/bottle D | then agitate 5×",
        "12    | Agitate 5×             | tap, then rest until 19:08:55",
        "100   | Rest                   | then drain at 19:08:55",
        "536   | Drain                  | developer back to bottle D; then stop bath in, bottle S. Cap only",
      })
  void theActIsSaidInWords(double second, String lines, String then) {
    assertThat(act(second, "a.lines.join('/')")).isEqualTo(lines);
    assertThat(act(second, "a.then")).isEqualTo(then);
  }

  @ParameterizedTest
  @CsvSource({"10, 0", "11.4, 0", "11.5, 1", "13, 2", "17.4, 4"})
  void inversionsAreCountedAsTheyAreDone(double second, int done) {
    assertThat(act(second, "[a.count.of, a.count.done]").toString())
        .isEqualTo(List.of(5, done).toString());
  }

  @Test
  void secondsLeadToTheNextAct() {
    assertThat(act(100, "(a.nextAt - s(100)) / 1000")).isEqualTo(435);
  }

  @Test
  void whatWasPressedOutlivesAReload() {
    ask("outbox.js", "new m.Outbox(99).add({id: 'press-one'})");
    page.reload();
    assertThat(ask("outbox.js", "new m.Outbox(99).first().id")).isEqualTo("press-one");
    ask("outbox.js", "new m.Outbox(99).remove('press-one')");
    assertThat(ask("outbox.js", "new m.Outbox(99).length")).isEqualTo(0);
  }

  @Test
  void twoTabsOfOneDeviceKeepEachOthersPresses() {
    Object kept =
        ask(
            "outbox.js",
            "(() => { const one = new m.Outbox(98), other = new m.Outbox(98);"
                + " one.add({id: 'a'}); other.add({id: 'b'}); one.remove('a');"
                + " const left = new m.Outbox(98).waiting.map(e => e.id).join(); one.remove('b');"
                + " return left; })()");
    assertThat(kept).isEqualTo("b");
  }

  /** Every act is a change to be seen: the frame of one has gone before the next comes. */
  @Test
  void withReducedMotionEveryActBringsAFrameThatStandsStill() {
    page.emulateMedia(new Page.EmulateMediaOptions().setReducedMotion(ReducedMotion.REDUCE));
    Object seen =
        ask(
            "signal.js",
            "await (async () => { const sheet = document.createElement('div');"
                + " const pause = ms => new Promise(then => setTimeout(then, ms));"
                + " const signal = new m.Signal(sheet); const seen = [];"
                + " for (let act = 0; act < 2; act++) { signal.give([]); seen.push(sheet.className);"
                + " await pause(1200); seen.push(sheet.className); await pause(3600);"
                + " seen.push(sheet.className); } return seen.join(); })()");
    assertThat(seen).isEqualTo("framed,framed,,framed,framed,");
  }

  /** A given-up run says nothing more beside the other tank, and ticks keep out of words. */
  @Test
  void cuesOfTwoTanksAreMergedForOnePairOfHands() {
    Object merged =
        ask(
            "hands.js",
            "(() => { const cue = (id, at, countIn = 0) => ({id, at, countIn, tone: [{milliseconds: 500}]});"
                + " const run = (run, phase, endsAt, cues) => ({run, phase, endsAt, cues});"
                + " return m.mergedCues([run(1, 'running', 99000, [cue('a', 1000), cue('b', 20000, 3)]),"
                + " run(2, 'finished', 18000, [cue('c', 16500), cue('d', 30000)])])"
                + ".map(c => c.id + ' ' + c.countIn).join(); })()");
    assertThat(merged).isEqualTo("1:a 0,2:c 0,1:b 1");
  }

  @Test
  void aKeyPressedTwiceWithinSevenTenthsCountsOnce() {
    page.evaluate(
        "async root => { const m = await import(root + '/bench/keyboard.js');"
            + " window.heard = []; new m.Keyboard(l => { window.heard.push(l); return true; }); }",
        root());
    page.keyboard().press("w");
    page.keyboard().press("w");
    page.keyboard().press("r");
    page.waitForTimeout(750);
    page.keyboard().press("r");
    assertThat(page.evaluate("window.heard").toString()).isEqualTo("[W, R, R]");
    page.locator("nav a").first().focus();
    page.keyboard().press("m");
    assertThat(page.evaluate("window.heard").toString()).isEqualTo("[W, R, R]");
  }

  private Object act(double second, String expression) {
    return ask(
        "act.js",
        "(() => { "
            + RUN
            + " const a = m.actAt(run, s("
            + second
            + ")); return "
            + expression
            + "; })()");
  }

  private Object ask(String module, String expression) {
    return page.evaluate(
        "async root => { const m = await import(root + '/bench/"
            + module
            + "'); return "
            + expression
            + "; }",
        root());
  }

  private String root() {
    String style = page.locator("link[rel=stylesheet]").getAttribute("href");
    return style.substring(0, style.lastIndexOf('/'));
  }
}
