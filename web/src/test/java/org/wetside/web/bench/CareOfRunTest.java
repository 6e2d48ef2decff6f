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
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What a screen is told of the baths that hands are about to touch, and the rinse it may ask for.
 */
class CareOfRunTest {
  private OpenServer server;

  @BeforeEach
  void open(@TempDir Path home) {
    StoredLoad.in(home);
    server = new OpenServer(home, Clock.systemUTC());
    put("S", "SB-1", "stop bath");
    put("F", "TF-3", "fixer");
    assertThat(server.postJson("/api/runs", "{\"load\":1}").statusCode()).isEqualTo(201);
  }

  @AfterEach
  void close() {
    server.close();
  }

  private void put(String letter, String contents, String bath) {
    String body =
        "{\"letter\":\"%s\",\"contents\":\"%s\",\"role\":\"working\",\"bath\":\"%s\",\"fullMl\":1000}";
    assertThat(server.postJson("/api/bottles", body.formatted(letter, contents, bath)).statusCode())
        .isEqualTo(201);
  }

  private JsonNode run(long run) {
    return JsonMapper.shared().readTree(server.get("/api/runs/" + run).body());
  }

  private HttpResponse<String> rinse(long run, int before) {
    return server.postJson(
        "/api/runs/" + run + "/rinse", "{\"before\":" + before + ",\"screen\":\"laptop\"}");
  }

  private void send(String id, String kind, String more) {
    assertThat(
            server
                .postJson(
                    "/api/runs/1/events",
                    "{\"id\":\"%s\",\"kind\":\"%s\",\"occurredAt\":\"%s\",\"screen\":\"laptop\"%s}"
                        .formatted(id, kind, Instant.now(), more))
                .statusCode())
        .isEqualTo(200);
  }

  @Test
  void everyBathFromABottleHasItsCautionsAndPlainWaterHasNone() {
    JsonNode steps = run(1).path("steps");
    for (JsonNode step : steps) {
      boolean fromBottle = !step.path("water").asBoolean() && step.path("wet").asBoolean();
      assertThat(step.path("care").isNull())
          .as(step.path("kind").asString())
          .isNotEqualTo(fromBottle);
    }
    JsonNode developer = steps.get(0).path("care");
    assertThat(developer.path("brief").asString())
        .isEqualTo("soup: no caution on file: read the maker's safety data sheet first");
    JsonNode fixer = steps.get(2).path("care");
    assertThat(fixer.path("cautions").get(0).path("about").asString())
        .isEqualTo("ammonium thiosulfate");
    assertThat(fixer.path("cautions").get(0).path("source").asString()).contains("CH-S50");
  }

  /** CH-S14 p.106. */
  @Test
  void bathsThatShouldNotMeetAreSaidBeforeThePourAndTheRinseOpensTheRunAnew() {
    JsonNode against = run(1).path("steps").get(2).path("care").path("against").get(0);
    assertThat(against.path("brief").asString())
        .isEqualTo("acid stop before an alkaline fixer: rinse in plain water between them");
    assertThat(against.path("source").asString()).isEqualTo("CH-S14, p.106");
    assertThat(against.path("rinse").asBoolean()).isTrue();
    assertThat(server.get("/api/runs/1").body())
        .contains("\"group\":\"handling\",\"state\":\"warning\"");

    HttpResponse<String> opened = rinse(1, against.path("before").asInt());
    assertThat(opened.statusCode()).as(opened.body()).isEqualTo(201);
    assertThat(opened.headers().firstValue("Location")).contains("/api/runs/2");
    JsonNode anew = run(2);
    assertThat(anew.path("phase").asString()).isEqualTo("ready");
    assertThat(anew.path("load").asLong()).isEqualTo(1);
    assertThat(anew.path("process").asString()).isEqualTo("small-tank-rinse");
    assertThat(anew.path("steps").get(2).path("kind").asString()).isEqualTo("rinse");
    assertThat(anew.path("steps").get(3).path("care").path("against").isEmpty()).isTrue();
    assertThat(anew.path("steps").get(1).path("bottle").asString()).isEqualTo("S");
    assertThat(run(1).path("phase").asString()).isEqualTo("abandoned");
    assertThat(server.get("/api/runs/1/record").body()).contains("opened anew with a rinse");
  }

  @Test
  void onceSomethingIsPouredTheStepsStand() {
    send("first-pour", "started", ",\"confirmed\":true");
    HttpResponse<String> refused = rinse(1, 3);
    assertThat(refused.statusCode()).isEqualTo(409);
    assertThat(refused.body()).contains("its steps stand", "Rinse in plain water all the same");
    assertThat(run(1).path("phase").asString()).isEqualTo("running");
    assertThat(run(1).path("steps").get(2).path("care").path("against").size())
        .as("it is still said before the fixer")
        .isEqualTo(1);
  }

  @Test
  void aRinseThatHasNoPlaceIsRefusedAndTheRunStaysReady() {
    for (int before : new int[] {1, 99, 5}) {
      assertThat(rinse(1, before).statusCode()).as("before " + before).isEqualTo(400);
    }
    assertThat(rinse(9, 3).statusCode()).isEqualTo(404);
    assertThat(server.postJson("/api/runs/1/rinse", "{\"before\":3}").body()).contains("screen");
    assertThat(run(1).path("phase").asString()).isEqualTo("ready");
  }

  /** Another bottle under the letter counts until the first pour, and not after it. */
  @Test
  void untilTheFirstPourTheShelfIsAskedAnew() {
    server.wetside().changeBottle().discard("F", "");
    put("F", "F-24", "fixer");
    assertThat(run(1).path("steps").get(2).path("care").path("against").isEmpty()).isTrue();
    send("first-pour", "started", ",\"confirmed\":true");
    String before = run(1).path("steps").get(2).path("care").toString();
    server.wetside().changeBottle().discard("F", "");
    put("F", "TF-3", "fixer");
    assertThat(run(1).path("steps").get(2).path("care").toString()).isEqualTo(before);
  }

  @Test
  void aRunThatIsOverSaysNothingAnyMore() {
    send("first-pour", "started", ",\"confirmed\":true");
    send("give-it-up", "abandoned", ",\"reason\":\"only a trial\"");
    for (JsonNode step : run(1).path("steps")) {
      assertThat(step.path("care").isNull()).isTrue();
    }
  }
}
