package org.wetside.acceptance.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.Wetside;
import org.wetside.app.bench.SteadyClock;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;

/**
 * Cues of a real run as a real browser renders them, with its tab hidden and its processor six
 * times as slow: each is there once, where the plan has it. A plain interval timer runs beside it.
 */
class CueTimingTest {
  /** A bout every six seconds: many cues in little time, none nearer than a second to another. */
  private static final String PROCESS =
      "{\"process\":\"drill\",\"name\":\"Drill\",\"steps\":[{\"kind\":\"developer\",\"bottle\":\"D\","
          + "\"agitation\":\"2 s, then 2 s every 6 s\",\"afterwards\":\"discard\",\"light\":\"dark\"},"
          + "{\"kind\":\"wash\",\"time\":\"5:00\"}]}";

  private static final double WITHIN_SAMPLES_MS = 20;
  private static final double WITHIN_PAGE_MS = 50;
  private static final double SHARE = 0.99;

  private final HttpClient http = HttpClient.newHttpClient();

  @TempDir Path home;

  @Test
  void cuesSoundWhereThePlanHasThemForAMinute() throws Exception {
    measure(Duration.ofSeconds(60));
  }

  @Test
  @Tag("long")
  void cuesSoundWhereThePlanHasThemForFiveMinutes() throws Exception {
    measure(Duration.ofMinutes(5));
  }

  @Test
  @Tag("long")
  void cuesSoundWhereThePlanHasThemForAnHour() throws Exception {
    measure(Duration.ofMinutes(60));
  }

  private void measure(Duration length) throws Exception {
    Clock clock = new SteadyClock(Clock.systemUTC(), System::nanoTime);
    try (Wetside wetside = Wetside.open(home, clock);
        WebServer server = WebServer.start(wetside, WebOptions.onPort(0));
        HiddenBrowser browser = new HiddenBrowser()) {
      prepare(server.address(), length);
      browser.open(server.address().resolve("/bench/1").toString());
      browser.run(
          "localStorage.setItem('wetside.heard', 'yes');"
              + " localStorage.setItem('wetside.voice', 'tones')");
      browser.open(server.address().resolve("/bench/1").toString());
      Thread.sleep(500);
      browser.press("n", "KeyN");
      Thread.sleep(800);
      browser.press("n", "KeyN");
      Thread.sleep(1_500);
      assertThat(browser.ask("window.listening")).isEqualTo(true);
      send(server.address(), "start-00000001", "started", ",\"confirmed\":true");
      Thread.sleep(1_000);
      List<Double> cues = new ArrayList<>();
      browser.run(
          "window.run = null; fetch('/api/runs/1').then(r => r.json()).then(r => { window.run = r; })");
      Thread.sleep(1_000);
      List<?> moments = (List<?>) browser.ask("window.run.cues.map(c => Date.parse(c.at))");
      moments.forEach(moment -> cues.add(((Number) moment).doubleValue()));
      double serverMinusPage = serverMinusPage(browser);
      browser.run(
          "window.plainTimer(arguments[0].filter(at => at > Date.now() + 2000), arguments[1])",
          cues,
          serverMinusPage);
      browser.slow(6);
      browser.run(
          "window.seen = []; setInterval(() => window.seen.push(document.visibilityState), 1000)");
      browser.hide();
      Instant end = Instant.now().plus(length);
      while (Instant.now().isBefore(end)) {
        Thread.sleep(1_000);
      }
      browser.show();
      List<?> seen = (List<?>) browser.ask("window.seen");
      long hidden = seen.stream().filter("hidden"::equals).count();
      assertThat(hidden)
          .as("looks that found the page hidden")
          .isGreaterThan(seen.size() * 8L / 10);
      judge(browser, cues, serverMinusPage(browser), end, length);
    }
  }

  private static void judge(
      HiddenBrowser browser,
      List<Double> cues,
      double serverMinusPage,
      Instant end,
      Duration length) {
    List<Double> heard = numbers(browser.ask("window.heard"));
    List<Double> scheduled = numbers(browser.ask("window.scheduled"));
    List<List<Double>> clocks = new ArrayList<>();
    ((List<?>) browser.ask("window.clocks")).forEach(pair -> clocks.add(numbers(pair)));
    List<Double> due =
        cues.stream()
            .filter(at -> at > end.toEpochMilli() - length.toMillis() + 2_000)
            .filter(at -> at < end.toEpochMilli() - 2_000)
            .toList();
    List<Double> fromPlan = new ArrayList<>();
    List<Double> fromSchedule = new ArrayList<>();
    int notOnce = 0;
    for (double cue : due) {
      double page = cue - serverMinusPage;
      List<Double> near =
          heard.stream().filter(at -> Math.abs(pageOf(at, clocks) - page) < 450).toList();
      if (near.size() != 1) {
        notOnce++;
        continue;
      }
      double at = near.get(0);
      fromPlan.add(Math.abs(pageOf(at, clocks) - page));
      fromSchedule.add(
          scheduled.stream().mapToDouble(when -> Math.abs(when - at) * 1_000).min().orElseThrow());
    }
    List<Double> plain = numbers(browser.ask("window.plain")).stream().map(Math::abs).toList();
    System.out.printf(
        Locale.ROOT,
        "cues in %d s, tab hidden, processor 6 times slower: %d, not exactly once: %d;"
            + " from the audio clock %s; from the page's plan %s; plain timer %s%n",
        length.toSeconds(),
        due.size(),
        notOnce,
        spread(fromSchedule),
        spread(fromPlan),
        spread(plain));
    assertThat(due)
        .as("enough cues to judge by")
        .hasSizeGreaterThan((int) (length.toSeconds() / 5));
    assertThat(notOnce).as("each cue exactly once").isZero();
    assertThat(share(fromSchedule, WITHIN_SAMPLES_MS)).isGreaterThanOrEqualTo(SHARE);
    assertThat(share(fromPlan, WITHIN_PAGE_MS)).isGreaterThanOrEqualTo(SHARE);
  }

  /** A moment of the audio clock on the page's clock, by the pairs measured around it. */
  private static double pageOf(double audio, List<List<Double>> clocks) {
    double[] near =
        clocks.stream()
            .filter(pair -> Math.abs(pair.get(1) - audio) < 15)
            .mapToDouble(pair -> pair.get(0) - pair.get(1) * 1_000)
            .sorted()
            .toArray();
    return audio * 1_000 + near[near.length / 2];
  }

  /** The server's clock less performance.now of the page: of the quickest of many questions. */
  private static double serverMinusPage(HiddenBrowser browser) throws InterruptedException {
    browser.run(
        """
        window.trips = [];
        (async () => {
          for (let i = 0; i < 15; i++) {
            const sent = performance.now();
            const said = Date.parse((await (await fetch('/api/now', {cache: 'no-store'})).json()).now);
            const got = performance.now();
            window.trips.push([got - sent, said - (sent + got) / 2]);
          }
        })()""");
    Thread.sleep(1_500);
    return ((Number) browser.ask("window.trips.sort((a, b) => a[0] - b[0])[0][1]")).doubleValue();
  }

  private static double share(List<Double> errors, double within) {
    return errors.stream().filter(error -> error <= within).count() / (double) errors.size();
  }

  private static String spread(List<Double> errors) {
    double[] sorted = errors.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    return sorted.length == 0
        ? "none"
        : String.format(
            Locale.ROOT,
            "median %.1f ms, 99 %% within %.1f ms, worst %.1f ms",
            sorted[sorted.length / 2],
            sorted[(int) Math.ceil(0.99 * sorted.length) - 1],
            sorted[sorted.length - 1]);
  }

  private static List<Double> numbers(Object list) {
    return ((List<?>) list).stream().map(one -> ((Number) one).doubleValue()).toList();
  }

  private void prepare(URI server, Duration length) throws IOException, InterruptedException {
    String room = "{\"format\":\"135\",\"most\":2,\"eachMl\":300}";
    post(server, "/api/tanks", "{\"name\":\"Double\",\"rooms\":[" + room + "],\"holdsMl\":650}");
    post(
        server,
        "/api/rolls",
        "{\"number\":\"A-1\",\"format\":\"135\",\"frames\":36,\"film\":\"TRI-X 400\",\"ei\":400}");
    post(server, "/api/processes", PROCESS);
    post(
        server,
        "/api/loads",
        "{\"rolls\":[\"A-1\"],\"tank\":\"Double\",\"process\":\"drill\",\"developer\":\"D-76\","
            + "\"temp\":\"20C\",\"source\":\"a test\",\"time\":\""
            + (length.toMinutes() + 3)
            + ":00\"}");
    post(server, "/api/runs", "{\"load\":1}");
  }

  private void send(URI server, String id, String kind, String more)
      throws IOException, InterruptedException {
    post(
        server,
        "/api/runs/1/events",
        "{\"id\":\""
            + id
            + "\",\"kind\":\""
            + kind
            + "\",\"occurredAt\":\""
            + Instant.now()
            + "\",\"screen\":\"laptop\""
            + more
            + "}");
  }

  private void post(URI server, String path, String body) throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(server.resolve(path))
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build();
    HttpResponse<String> answer = http.send(request, HttpResponse.BodyHandlers.ofString());
    assertThat(answer.statusCode()).as(path + ": " + answer.body()).isBetween(200, 299);
  }
}
