package org.wetside.web.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.web.OpenServer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Formulas and batches over HTTP. */
class FormulaRoutesTest {
  private static final JsonMapper JSON = new JsonMapper();

  private OpenServer server;

  @BeforeEach
  void open(@TempDir Path home) {
    server = new OpenServer(home, Clock.systemUTC());
  }

  @AfterEach
  void close() {
    server.close();
  }

  @Test
  void theSameViewAsTheCommand() {
    JsonNode view =
        json(
            server.get(
                "/api/formulas/D-76?make=700mL&have=sodium%20sulfite%20heptahydrate&balance=0.1g"));
    JsonNode sulfite = view.path("ingredients").get(1);
    assertThat(sulfite.path("grams").asDouble()).isCloseTo(140.0, within(0.2));
    assertThat(sulfite.path("weighable").asBoolean()).isTrue();
    JsonNode exchange = sulfite.path("substitution");
    assertThat(exchange.path("factor").asDouble()).isCloseTo(2.0005, within(0.0001));
    assertThat(exchange.path("source").path("title").asString()).contains("IUPAC");
    assertThat(exchange.path("printedFactor").asDouble()).isEqualTo(2.0);
    assertThat(exchange.path("printedSource").path("id").asString()).isEqualTo("CH-S14, p.330");
    assertThat(view.path("ingredients").get(0).path("weighable").asBoolean()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "D-76?balance=0g, balance step, it must be more than 0 g",
    "D-76?balance=heavy, balance step, for example 0.1g",
    "D-76?make=0mL, volume to make, from 10 mL to 100 L",
    "D-76?make=200L, 200000 mL, from 10 mL to 100 L",
    "D-76?make=-1L, -1, at least 0 mL",
    "D-76?have=moonshine, moonshine, substance",
    "D-76?have=sodium%20sulfite, say which, heptahydrate",
    "D-76?measures=100mL, measure, division",
    "HE-TYPE?make=1L, HE-TYPE, oxidising",
    "CHROME-FIX?make=1L, CHROME-FIX, chromium waste",
    "HT-2?make=1L, HT-2, test kit"
  })
  void whatCannotBeIsRefusedWithThingValueAndLimit(String asked, String thing, String limit) {
    HttpResponse<String> refused = server.get("/api/formulas/" + asked);
    assertThat(refused.statusCode()).as(refused.body()).isEqualTo(400);
    assertThat(refused.body()).contains(thing, limit, "\"exitCode\":2");
  }

  @Test
  void whatIsNotMixedIsStillShown() {
    JsonNode shown = json(server.get("/api/formulas/ARMY-STOP"));
    assertThat(shown.path("mixable").asBoolean()).isFalse();
    assertThat(shown.path("reason").asString()).contains("paper strength");
    assertThat(shown.path("ingredients").get(0).path("volumeMl").asDouble())
        .isCloseTo(44.36, within(0.01));
    assertThat(server.get("/api/formulas/none").statusCode()).isEqualTo(404);
  }

  @Test
  void aBatchIsBegunTickedOffAndPutIntoABottle() {
    HttpResponse<String> begun =
        server.postJson("/api/batches", "{\"formula\":\"SB-8\",\"make\":\"1L\"}");
    assertThat(begun.statusCode()).as(begun.body()).isEqualTo(201);
    assertThat(put("/api/batches/1/bottle", "{\"letter\":\"S\"}").body()).contains("not mixed yet");
    assertThat(put("/api/batches/1/steps/1", "{\"amount\":\"750mL\"}").statusCode()).isEqualTo(200);
    assertThat(put("/api/batches/1/steps/2", "{\"amount\":\"2kg\"}").body())
        .contains("2000 g", "ten times the planned 15 g");
    assertThat(put("/api/batches/1/steps/2", "{\"amount\":\"15.2\"}").statusCode()).isEqualTo(200);
    assertThat(put("/api/batches/1/steps/2", "{}").statusCode()).isEqualTo(400);
    assertThat(put("/api/batches/1/steps/9", "{\"amount\":\"1g\"}").statusCode()).isEqualTo(400);
    JsonNode mixed = json(put("/api/batches/1/steps/3", "{\"amount\":\"1L\"}"));
    assertThat(mixed.path("mixed").asBoolean()).isTrue();
    assertThat(mixed.path("steps").get(1).path("offPercent").asDouble())
        .isCloseTo(1.333, within(0.001));
    assertThat(put("/api/batches/1/bottle", "{\"letter\":\"S\"}").body())
        .contains("no bottle of that letter");
    assertThat(json(server.get("/api/batches")).path("batches").get(0).path("mixed").asBoolean())
        .isTrue();
  }

  @Test
  void oneOfYourOwnComesAndGoes() {
    String body =
        "{\"formula\":\"Mine\",\"source\":\"a leaflet\",\"lines\":\"2 g metol\\n1 L water to make\"}";
    assertThat(server.postJson("/api/formulas", body).statusCode()).isEqualTo(201);
    assertThat(json(server.get("/api/formulas/mine?make=500mL")).path("standing").asString())
        .isEqualTo("published");
    assertThat(
            server
                .send(HttpRequest.newBuilder(server.at("/api/formulas/D-76")).DELETE().build())
                .body())
        .contains("it is on file and stays");
    assertThat(
            server
                .send(HttpRequest.newBuilder(server.at("/api/formulas/Mine")).DELETE().build())
                .statusCode())
        .isEqualTo(200);
    assertThat(server.get("/api/formulas/Mine").statusCode()).isEqualTo(404);
    assertThat(server.postJson("/api/formulas", body.replace("1 L water to make", "")).body())
        .contains("the volume");
  }

  private HttpResponse<String> put(String path, String body) {
    return server.send(
        HttpRequest.newBuilder(server.at(path))
            .header("Content-Type", "application/json")
            .PUT(HttpRequest.BodyPublishers.ofString(body))
            .build());
  }

  private static JsonNode json(HttpResponse<String> answer) {
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    return JSON.readTree(answer.body());
  }
}
