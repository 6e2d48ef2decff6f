package org.wetside.web.rolls;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.web.OpenServer;

/** Rolls over a real server. Every roll here is invented. */
class RollsRoutesTest {
  private OpenServer server;

  @BeforeEach
  void open(@TempDir Path home) {
    server = new OpenServer(home, Clock.systemUTC());
  }

  @AfterEach
  void close() {
    server.close();
  }

  private HttpResponse<String> send(String method, String path, String type, String body) {
    return server.send(
        HttpRequest.newBuilder(server.at(path))
            .header("Content-Type", type)
            .method(method, HttpRequest.BodyPublishers.ofString(body))
            .build());
  }

  private HttpResponse<String> lines(String text) {
    return send("POST", "/api/rolls", "text/plain", text);
  }

  private HttpResponse<String> patch(String number, String json) {
    return send("PATCH", "/api/rolls/" + number, "application/json", json);
  }

  @Test
  void takesLinesOrNamesEachBadOne() {
    HttpResponse<String> refused = lines("TM-01 135 36 TRI-X 400 @400\n136 TRI-X\n135 99 TRI-X");
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body()).contains("line 2", "line 3", "1 to 72", "\"exitCode\":2");
    assertThat(server.get("/api/rolls").body()).isEqualTo("{\"rolls\":[]}");
    HttpResponse<String> kept = lines("TM-01 135 36 TRI-X 400 @400 \"harbour\"\n120 T-MAX 100");
    assertThat(kept.statusCode()).isEqualTo(201);
    assertThat(kept.body())
        .contains("\"number\":\"TM-02\"", "\"filmCode\":\"400TX\"", "\"ei\":400.0");
  }

  @Test
  void takesOneOrManyAsJson() {
    HttpResponse<String> one =
        server.postJson("/api/rolls", "{\"format\":\"135\",\"film\":\"TRI-X 400\",\"ei\":800}");
    assertThat(one.statusCode()).isEqualTo(201);
    assertThat(one.body()).contains("-001\"", "\"ei\":800.0");
    HttpResponse<String> refused =
        server.postJson(
            "/api/rolls",
            "[{\"format\":\"120\",\"film\":\"A\"},{\"format\":\"135\",\"film\":\"B\",\"frames\":99}]");
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body()).contains("roll 2 of 2", "1 to 72");
    assertThat(server.get("/api/rolls?state=waiting").body()).doesNotContain("\"A\"");
    assertThat(server.postJson("/api/rolls", "{\"colour\":1}").statusCode()).isEqualTo(400);
    assertThat(server.get("/api/rolls?state=lost").body()).contains("waiting, loaded");
  }

  @Test
  void changesOnlyWhatIsSaid() {
    lines("TM-01 135 36 T-MAX @400 \"harbour\" on 2026-01-03");
    assertThat(server.get("/api/rolls/TM-01").body())
        .contains("\"filmCode\":null", "\"mayBe\":[\"");
    HttpResponse<String> changed = patch("tm-01", "{\"title\":\"sluice\",\"film\":\"TRI-X 400\"}");
    assertThat(changed.statusCode()).as(changed.body()).isEqualTo(200);
    assertThat(changed.body())
        .contains("\"title\":\"sluice\"", "\"frames\":36", "\"ei\":400.0", "\"filmCode\":\"400TX\"")
        .contains("2026-01-03");
    assertThat(server.get("/api/rolls?text=slui").body()).contains("TM-01");
    assertThat(server.get("/api/rolls?text=harbour").body()).doesNotContain("TM-01");
    HttpResponse<String> early = patch("TM-01", "{\"sleeve\":\"page 3\"}");
    assertThat(early.statusCode()).isEqualTo(409);
    assertThat(early.body()).contains("\"exitCode\":3");
    assertThat(patch("TM-99", "{}").statusCode()).isEqualTo(404);
  }

  @Test
  void aWithdrawnRollIsKept() {
    lines("TM-01 135 TRI-X 400");
    HttpResponse<String> gone = send("DELETE", "/api/rolls/TM-01", "text/plain", "");
    assertThat(gone.body()).contains("\"state\":\"withdrawn\"");
    assertThat(server.get("/api/rolls").body()).doesNotContain("TM-01");
    assertThat(send("DELETE", "/api/rolls/TM-01", "text/plain", "").statusCode()).isEqualTo(409);
    assertThat(patch("TM-01", "{\"withdrawn\":false}").body()).contains("\"state\":\"waiting\"");
  }
}
