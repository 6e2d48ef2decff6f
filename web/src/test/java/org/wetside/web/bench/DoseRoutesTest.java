package org.wetside.web.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.web.OpenServer;

/**
 * The development dose over a real server: TRI-X 400 in D-76, of which printed times tell a rate.
 */
class DoseRoutesTest {
  private static final String EVENTS = "/api/runs/1/events";

  private OpenServer server;

  @BeforeEach
  void open(@TempDir Path home) {
    server = new OpenServer(home, Clock.systemUTC());
    String room = "{\"format\":\"135\",\"most\":2,\"eachMl\":300}";
    server.postJson("/api/tanks", "{\"name\":\"Double\",\"rooms\":[" + room + "],\"holdsMl\":650}");
    server.postJson(
        "/api/rolls",
        "{\"number\":\"A-1\",\"format\":\"135\",\"frames\":36,\"film\":\"TRI-X 400\",\"ei\":400}");
    server.postJson(
        "/api/loads",
        "{\"rolls\":[\"A-1\"],\"tank\":\"Double\",\"developer\":\"D-76\",\"dilution\":\"stock\","
            + "\"temp\":\"20C\"}");
    assertThat(server.postJson("/api/runs", "{\"load\":1}").statusCode()).isEqualTo(201);
    send("started", -130, ",\"confirmed\":true");
  }

  @AfterEach
  void close() {
    server.close();
  }

  @Test
  void beforeAReadingTheRateIsThereAndNothingMoves() {
    assertThat(server.get("/api/runs/1").body())
        .contains("\"betaPerK\":0.", "\"standing\":\"computed\"", "\"reached\":[]")
        .contains("\"movedSeconds\":0.0");
  }

  @Test
  void aColdReadingMovesTheEndAndIsKept() {
    HttpResponse<String> kept = send("reading taken", -2, ",\"step\":0,\"temperatureC\":19.2");
    assertThat(kept.statusCode()).as(kept.body()).isEqualTo(200);
    assertThat(kept.body())
        .contains("\"movedBecause\":\"the last reading\"", "\"read\":true", "\"share\":0.")
        .doesNotContain("\"movedSeconds\":0.0");
    String record = server.get("/api/runs/1/record").body();
    assertThat(record).contains("\"dose\":{\"plannedSeconds\":", "\"reachedSeconds\":");
  }

  @Test
  void badReadingsAreAnsweredWithTheirLimit() {
    HttpResponse<String> hot = send("reading taken", -2, ",\"step\":0,\"temperatureC\":200");
    assertThat(hot.statusCode()).isEqualTo(409);
    assertThat(hot.body()).contains("200 °C is refused: between -5 and 60 °C");
    HttpResponse<String> far = send("reading taken", -60, ",\"step\":0,\"temperatureC\":23.5");
    assertThat(far.statusCode()).isEqualTo(409);
    assertThat(far.body()).contains("\"outcome\":\"asks\"", "moves the end by", "15 %");
  }

  @Test
  void theReadingsOfARunTellADrift() {
    assertThat(server.get("/api/runs/1/drift?room=15C").body()).contains("at least 2 are needed");
    send("reading taken", -100, ",\"step\":0,\"temperatureC\":20.0");
    send("reading taken", -2, ",\"step\":0,\"temperatureC\":19.8");
    HttpResponse<String> drift = server.get("/api/runs/1/drift?room=15C");
    assertThat(drift.statusCode()).as(drift.body()).isEqualTo(200);
    assertThat(drift.body()).contains("\"timeConstantSeconds\":", "\"roomC\":15.0");
  }

  private HttpResponse<String> send(String kind, int secondsFromNow, String more) {
    return server.postJson(
        EVENTS,
        "{\"id\":\"evt"
            + kind.replace(' ', '-')
            + secondsFromNow
            + Integer.toHexString(more.hashCode())
            + "\",\"kind\":\""
            + kind
            + "\",\"occurredAt\":\""
            + Instant.now().plusSeconds(secondsFromNow)
            + "\",\"screen\":\"laptop\""
            + more
            + "}");
  }
}
