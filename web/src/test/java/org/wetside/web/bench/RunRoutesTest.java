package org.wetside.web.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URLConnection;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.web.OpenServer;

/** Runs over a real server: what docs/bench-snapshot.md promises a screen. */
class RunRoutesTest {
  private OpenServer server;
  private long load;

  @BeforeEach
  void open(@TempDir Path home) {
    load = StoredLoad.in(home);
    server = new OpenServer(home, Clock.systemUTC());
  }

  @AfterEach
  void close() {
    server.close();
  }

  @Test
  void aLoadIsBroughtToTheBenchOnce() {
    HttpResponse<String> opened = server.postJson("/api/runs", "{\"load\":" + load + "}");
    assertThat(opened.statusCode()).isEqualTo(201);
    assertThat(opened.headers().firstValue("Location")).contains("/api/runs/1");
    assertThat(opened.body())
        .contains("\"phase\":\"ready\"", "\"provisional\":true", "\"lid-locked\"")
        .contains("\"role\":\"next\",\"label\":\"First pour\",\"letter\":\"Space\"");
    HttpResponse<String> again = server.postJson("/api/runs", "{\"load\":" + load + "}");
    assertThat(again.headers().firstValue("Location")).contains("/api/runs/1");
    assertThat(server.postJson("/api/runs", "{\"load\":77}").body())
        .contains("load \\\"77\\\" is refused: there is no such load", "\"exitCode\":2");
  }

  @Test
  void whatAScreenSendsIsAnsweredWithTheRunAfterIt() {
    String events = "/api/runs/" + opened() + "/events";
    HttpResponse<String> asked = server.postJson(events, event("evt-00001", "started", ""));
    assertThat(asked.statusCode()).isEqualTo(409);
    assertThat(asked.body()).contains("\"outcome\":\"asks\"", "Not ticked: Reel dry and whole;");
    HttpResponse<String> taken =
        server.postJson(events, event("evt-00001", "started", ",\"confirmed\":true"));
    assertThat(taken.statusCode()).isEqualTo(200);
    assertThat(taken.body()).contains("\"outcome\":\"applied\"", "\"phase\":\"running\"");
    assertThat(taken.body()).contains("First pour, passed over: Reel dry and whole; Leader");
    HttpResponse<String> twice =
        server.postJson(events, event("evt-00001", "started", ",\"confirmed\":true"));
    assertThat(twice.body()).contains("\"outcome\":\"applied\"", "\"sequence\":1,");
    HttpResponse<String> refused =
        server.postJson(
            events, event("evt-00002", "lengthened", ",\"step\":0,\"seconds\":30,\"reason\":\"\""));
    assertThat(refused.statusCode()).isEqualTo(409);
    assertThat(refused.body()).contains("\"outcome\":\"refused\"", "never lengthened");
  }

  @Test
  void aReadingNobodyCanBelieveIsRefusedWithItsLimit() {
    String events = "/api/runs/" + opened() + "/events";
    HttpResponse<String> hot =
        server.postJson(
            events, event("evt-00001", "reading taken", ",\"step\":0,\"temperatureC\":200"));
    assertThat(hot.statusCode()).isEqualTo(409);
    assertThat(hot.body()).contains("200 °C is refused: between -5 and 60 °C");
    HttpResponse<String> believed =
        server.postJson(
            events, event("evt-00002", "reading taken", ",\"step\":0,\"temperatureC\":19.2"));
    assertThat(believed.body()).contains("\"rawC\":19.2", "\"beforePour\":");
  }

  @Test
  void anUnreadableEventNamesTheField() {
    String events = "/api/runs/" + opened() + "/events";
    assertThat(server.postJson(events, event("short", "note", ",\"text\":\"x\"")).body())
        .contains("id \\\"short\\\" is refused: 8 to 80 letters, digits, dashes");
    HttpResponse<String> unknown = server.postJson(events, event("evt-00001", "paused", ""));
    assertThat(unknown.statusCode()).isEqualTo(422);
    assertThat(unknown.body()).contains("kind of event", "paused");
    assertThat(server.get("/api/runs/99").statusCode()).isEqualTo(404);
    assertThat(server.get("/api/runs/x").body()).contains("a whole number");
  }

  @Test
  void aScreenIsToldOnConnectingAndAfterEveryEvent() throws IOException {
    long run = opened();
    URLConnection line = server.at("/api/runs/" + run + "/stream").toURL().openConnection();
    line.setRequestProperty("Accept", "text/event-stream");
    try (BufferedReader lines =
        new BufferedReader(new InputStreamReader(line.getInputStream(), StandardCharsets.UTF_8))) {
      assertThat(nextData(lines)).contains("\"phase\":\"ready\"");
      server.postJson(
          "/api/runs/" + run + "/events", event("evt-00001", "started", ",\"confirmed\":true"));
      assertThat(nextData(lines)).contains("\"phase\":\"running\"");
    }
  }

  /**
   * A screen left, then the server closed before the next heartbeat: the heartbeat went on to a
   * line that was gone, and answering its failure failed again, hundreds of thousands of times.
   */
  @Test
  void noHeartbeatOutlivesTheServer() throws IOException, InterruptedException {
    long run = opened();
    URLConnection line = server.at("/api/runs/" + run + "/stream").toURL().openConnection();
    line.setRequestProperty("Accept", "text/event-stream");
    try (BufferedReader lines =
        new BufferedReader(new InputStreamReader(line.getInputStream(), StandardCharsets.UTF_8))) {
      assertThat(nextData(lines)).contains("ready");
      assertThat(senders()).isEqualTo(1);
    }
    server.close();
    for (int i = 0; i < 50 && senders() > 0; i++) {
      Thread.sleep(20);
    }
    assertThat(senders()).isZero();
  }

  private static long senders() {
    return Thread.getAllStackTraces().keySet().stream()
        .filter(thread -> thread.isAlive() && thread.getName().equals("screens"))
        .count();
  }

  @Test
  void theSheetAndTheListShowTheRun() {
    assertThat(server.get("/bench").body()).contains("waits for its first pour", "A-1, A-2");
    HttpResponse<String> led = server.postForm("/bench", "load=" + load);
    assertThat(led.statusCode()).isEqualTo(303);
    String sheet = server.get(led.headers().firstValue("Location").orElseThrow()).body();
    assertThat(sheet).contains("id=\"first-snapshot\"", "Double: nothing poured yet", "Developer");
    assertThat(server.get("/bench").body()).contains("Go on at the Bench");
    assertThat(server.get("/api/runs").body()).contains("\"tank\":\"Double\"");
    assertThat(server.get("/api/runs/1/record").body()).contains("\"timeSource\":\"leaflet\"");
    assertThat(server.get("/api/now").body()).matches("\\{\"now\":\"[0-9T:.-]+Z\"}");
  }

  private long opened() {
    server.postJson("/api/runs", "{\"load\":" + load + "}");
    return 1;
  }

  private static String event(String id, String kind, String more) {
    return "{\"id\":\""
        + id
        + "\",\"kind\":\""
        + kind
        + "\",\"occurredAt\":\""
        + Instant.now()
        + "\",\"screen\":\"laptop\""
        + more
        + "}";
  }

  private static String nextData(BufferedReader lines) throws IOException {
    String line = lines.readLine();
    while (line != null && !line.startsWith("data:")) {
      line = lines.readLine();
    }
    return String.valueOf(line);
  }
}
