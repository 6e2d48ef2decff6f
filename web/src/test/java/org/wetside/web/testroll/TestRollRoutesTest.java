package org.wetside.web.testroll;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.web.OpenServer;

/** Densities here are invented: a softplus of gradient 0.60 over a fog of 0.25. */
class TestRollRoutesTest {
  private static final String ROLL =
      "{\"film\":\"TRI-X 400\",\"index\":\"400\",\"developer\":\"D-76\",\"dilution\":\"1+1\","
          + "\"metered\":\"1/60@f8\",\"middle\":\"8min\"}";
  private static final String FORM =
      "film=TRI-X+400&index=400&developer=D-76&dilution=1%2B1&metered=1%2F60%40f8&middle=8min";

  private OpenServer server;

  @BeforeEach
  void open(@TempDir Path home) {
    server =
        new OpenServer(home, Clock.fixed(Instant.parse("2026-01-14T19:00:00Z"), ZoneOffset.UTC));
  }

  @AfterEach
  void close() {
    server.close();
  }

  private HttpResponse<String> send(String method, String path, String json) {
    return server.send(
        HttpRequest.newBuilder(server.at(path))
            .header("Content-Type", "application/json")
            .method(method, HttpRequest.BodyPublishers.ofString(json))
            .build());
  }

  private static String readings(boolean curve) {
    StringBuilder readings = new StringBuilder("{\"curve\":" + curve + ",\"readings\":[");
    readings.append("{\"frame\":13,\"first\":\"0.25\"}");
    for (int i = 0; i < 9; i++) {
      double logH = Math.log10(8.0 / 400) + (i - 4) * Math.log10(2);
      double density = 0.25 + 0.60 * 0.12 * Math.log1p(Math.exp((logH + 2.5) / 0.12));
      readings.append(
          String.format(Locale.ROOT, ",{\"frame\":%d,\"first\":\"%.2f\"}", 14 + i, density));
    }
    return readings.append("]}").toString();
  }

  @Test
  void aRollIsFollowedOverHttp() {
    HttpResponse<String> begun = server.postJson("/api/testrolls", ROLL);
    assertThat(begun.statusCode()).as(begun.body()).isEqualTo(201);
    assertThat(begun.body())
        .contains("\"id\":1", "\"next\":\"leader\"", "\"film\":\"TRI-X 400\"", "\"frame\":36");
    assertThat(send("PUT", "/api/testrolls/1/steps/leader", "{\"note\":\"L 104 mm\"}").body())
        .contains("\"next\":\"gauge\"", "\"note\":\"L 104 mm\"");
    assertThat(send("DELETE", "/api/testrolls/1/steps/leader", "").body())
        .contains("\"next\":\"leader\"", "\"done\":[]");
    assertThat(
            send("PUT", "/api/testrolls/1/pieces/2", "{\"time\":\"8:10\",\"temp\":\"20.5C\"}")
                .body())
        .contains(
            "\"developedSeconds\":490.0",
            "\"temperatureC\":20.5",
            "\"developedOn\":\"2026-01-14\"");
    HttpResponse<String> curve = send("PUT", "/api/testrolls/1/pieces/2/readings", readings(true));
    assertThat(curve.statusCode()).as(curve.body()).isEqualTo(200);
    assertThat(curve.body()).contains("\"piece\":2", "\"curve\":1", "\"step\":\"read-2\"");
    assertThat(server.get("/api/curves/1").body())
        .contains("\"light\":\"camera\"", "test roll 1, piece 2");
    assertThat(send("DELETE", "/api/testrolls/1", "").body()).isEqualTo("{\"rolls\":[]}");
    assertThat(server.get("/api/testrolls/1").statusCode()).isEqualTo(404);
    assertThat(server.get("/api/curves/1").statusCode()).as("its curve stays").isEqualTo(200);
  }

  @Test
  void aPlanIsGivenWithoutKeepingIt() {
    HttpResponse<String> plan =
        server.get("/api/testrolls/plan?metered=1/60@f8&middle=8min&index=400");
    assertThat(plan.statusCode()).as(plan.body()).isEqualTo(200);
    // frame 2: four stops under, 8/400 lux s less 1.204 in log
    assertThat(plan.body()).contains("\"stops\":-4.0", "\"logH\":-2.903", "\"shutter\":\"1/1000\"");
    assertThat(server.get("/api/testrolls").body()).isEqualTo("{\"rolls\":[]}");
  }

  @Test
  void badInputOverHttpIsNamedAndWhatWasTypedIsKept() {
    assertThat(server.postJson("/api/testrolls", "{\"metered\":\"1/60@f8\"}").body())
        .contains("middle time");
    assertThat(server.postJson("/api/testrolls", ROLL.replace("TRI-X 400", "")).body())
        .contains("film", "needed");
    assertThat(server.get("/api/testrolls/plan?metered=1/60&middle=8min").body())
        .contains("metered exposure", "1/60@f8");
    server.postJson("/api/testrolls", ROLL);
    assertThat(send("PUT", "/api/testrolls/1/steps/dance", "{}").body())
        .contains("step of a test roll", "dance");
    assertThat(send("PUT", "/api/testrolls/1/steps/read-1", "{}").body()).contains("readings");
    assertThat(send("PUT", "/api/testrolls/1/pieces/4", "{}").statusCode()).isEqualTo(404);
    assertThat(send("PUT", "/api/testrolls/1/pieces/1", "{\"time\":\"8\"}").body())
        .contains("development time", "8:00".substring(0, 1));
    assertThat(
            send(
                    "PUT",
                    "/api/testrolls/1/pieces/1/readings",
                    "{\"readings\":[{\"frame\":13,\"first\":\"0.3\"}]}")
                .body())
        .contains("frame", "13", "frames 1 to 10");
    HttpResponse<String> early = send("PUT", "/api/testrolls/1/pieces/2/readings", readings(true));
    assertThat(early.statusCode()).isEqualTo(400);
    assertThat(early.body()).contains("how long piece 2", "what was typed is kept");
    assertThat(server.get("/api/testrolls/1").body()).contains("\"frame\":22,\"first\":\"1.");
    send("PUT", "/api/testrolls/1/steps/expose", "{}");
    assertThat(send("PUT", "/api/testrolls/1", ROLL).body()).contains("exposed");
  }

  @Test
  void whatReadADensityIsOneOfTheInstruments() {
    server.postJson("/api/testrolls", ROLL);
    send("PUT", "/api/testrolls/1/pieces/2", "{}");
    String by =
        readings(true).replace("\"curve\":true", "\"curve\":true,\"instrument\":\"cellar\"");
    assertThat(send("PUT", "/api/testrolls/1/pieces/2/readings", by).body())
        .contains("cellar", "there is none of that name");
    server.postForm("/curves/instruments", "name=cellar&kind=densitometer");
    assertThat(send("PUT", "/api/testrolls/1/pieces/2/readings", by).body())
        .contains("\"curve\":1");
    assertThat(server.get("/api/curves/1").body()).contains("cellar");
    // the piece that is read next was read by the same, as far as one can know
    assertThat(server.get("/curves/testrolls/1/pieces/3").body())
        .contains("<option value=\"cellar\" selected");
  }

  @Test
  void aRefusedFormKeepsWhatWasTyped() {
    HttpResponse<String> refused =
        server.postForm("/curves/testrolls/new", FORM.replace("8min", "8"));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("value=\"TRI-X 400\"", "value=\"1/60@f8\"", "value=\"8\"");
    assertThat(server.postForm("/curves/testrolls/new", FORM).statusCode()).isEqualTo(303);
    HttpResponse<String> long1 =
        server.postForm("/curves/testrolls/1/done", "step=leader&note=" + "x".repeat(401));
    assertThat(long1.statusCode()).isEqualTo(422);
    assertThat(long1.body()).contains("at most 400 characters", "x".repeat(401));
    HttpResponse<String> day =
        server.postForm(
            "/curves/testrolls/1/pieces/1/developed", "time=ten&day=12.1.2026&note=inverted");
    assertThat(day.statusCode()).isEqualTo(422);
    assertThat(server.get("/curves/testrolls/9").statusCode()).isEqualTo(404);
    assertThat(server.get("/curves/testrolls/1/pieces/4").statusCode()).isEqualTo(404);
  }

  @Test
  void theSheetIsAPdf() {
    server.postForm("/curves/testrolls/new", FORM);
    HttpResponse<String> sheet = server.get("/curves/testrolls/1/sheet.pdf?paper=letter");
    assertThat(sheet.headers().firstValue("Content-Type")).contains("application/pdf");
    assertThat(sheet.body().substring(0, 5)).isEqualTo("%PDF-");
    assertThat(server.get("/curves/testrolls/1/sheet.pdf?paper=foolscap").statusCode())
        .isEqualTo(400);
    assertThat(sheet.body().getBytes(StandardCharsets.UTF_8).length).isGreaterThan(5_000);
  }
}
