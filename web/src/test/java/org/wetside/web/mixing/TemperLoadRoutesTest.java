package org.wetside.web.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.thermal.Water;
import org.wetside.web.OpenServer;
import org.wetside.web.bench.StoredLoad;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** All baths of a load at once, and the waters of the house. */
class TemperLoadRoutesTest {
  private static final String WINTER = "cold=9C&hot=55C&room=16C";

  private OpenServer server;
  private long load;

  @BeforeEach
  void open(@TempDir Path home) {
    load = StoredLoad.in(home);
    server =
        new OpenServer(home, Clock.fixed(Instant.parse("2026-01-14T19:00:00Z"), ZoneOffset.UTC));
  }

  @AfterEach
  void close() {
    server.close();
  }

  private JsonNode json(String path) {
    HttpResponse<String> answer = server.get(path);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    return JsonMapper.shared().readTree(answer.body());
  }

  @Test
  void everyBathSaysWhatToPour() {
    JsonNode all = json("/api/loads/" + load + "/temper?" + WINTER);
    assertThat(all.get("baths").size()).isGreaterThan(4);
    double needed = 0;
    for (JsonNode bath : all.get("baths")) {
      assertThat(bath.get("text").asString()).isNotBlank();
      assertThat(bath.get("reached").asBoolean()).isTrue();
      assertThat(bath.get("atPourC").isNull()).isTrue();
      for (JsonNode pour : bath.get("pour")) {
        needed +=
            pour.get("name").asString().equals("cold")
                ? bath.get("fills").asInt() * pour.get("volumeMl").asDouble()
                : 0;
      }
    }
    assertThat(all.get("waters").get(0).get("neededMl").asDouble()).isCloseTo(needed, within(1e-6));
    assertThat(all.get("cautions").toString()).contains("scalds");
    assertThat(all.get("notes").toString()).contains("no table gives it");
  }

  @Test
  void aMeasuredTimeConstantForecastsEachPour() {
    JsonNode all = json("/api/loads/" + load + "/temper?" + WINTER + "&tau=60min");
    for (JsonNode bath : all.get("baths")) {
      assertThat(bath.get("atPourC").asDouble()).isBetween(16.0, 20.0);
      assertThat(bath.get("forecast").asString()).contains("when it is poured");
    }
  }

  @Test
  void whatCannotBeIsRefusedWithItsLimit() {
    String path = "/api/loads/" + load + "/temper?";
    assertThat(server.get(path).body()).contains("waters at hand", "under Equipment");
    assertThat(server.get(path + "cold=120C").body()).contains("between 0 and 100 °C");
    assertThat(server.get(path + "cold=9C&room=80C").body()).contains("between 0 and 50 °C");
    assertThat(server.get(path + "cold=9C&tau=0min").body()).contains("above 0 s");
    assertThat(server.get(path + "cold=9").statusCode()).isEqualTo(400);
    assertThat(server.get("/api/loads/99/temper?cold=9C").statusCode()).isEqualTo(404);
  }

  @Test
  void aTargetThatCannotBeReachedSaysTheNearest() {
    JsonNode all = json("/api/loads/" + load + "/temper?cold=9C&hot=12C&room=10C");
    JsonNode last = all.get("baths").get(all.get("baths").size() - 1);
    assertThat(last.get("reached").asBoolean()).isFalse();
    assertThat(last.get("text").asString()).contains("cannot be reached; the nearest is");
  }

  @Test
  void thePageLeadsFromTheLoadAndKeepsWhatWasTyped() {
    String page = "/loads/" + load + "/temper";
    assertThat(server.get("/loads/" + load).body()).contains(page);
    assertThat(server.get(page).body()).contains("waters at hand");
    assertThat(server.get(page + "?cold=9&hot=55&room=16&tau=60").body())
        .contains("begin with", "In this order", "when it is poured", "scalds");
    HttpResponse<String> refused = server.get(page + "?cold=9&hot=x&room=16");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("value=\"x\"", "value=\"16\"");
  }

  @Test
  void theWatersOfTheHouseAreKeptAndTakenAway() {
    assertThat(
            server.postForm("/equipment/waters", "name=cold+tap&temp=9&hardness=hard").statusCode())
        .isEqualTo(303);
    assertThat(server.get("/equipment/waters").body())
        .contains("cold tap", "9 °C", "hard", "distilled water for the last bath");
    assertThat(server.get("/loads/" + load + "/temper").body()).contains("cold tap");
    HttpResponse<String> put =
        server.send(
            HttpRequest.newBuilder(server.at("/api/waters"))
                .header("Content-Type", "application/json")
                .PUT(
                    HttpRequest.BodyPublishers.ofString(
                        "{\"name\":\"boiler\",\"temperatureC\":55,\"hardness\":\"soft\"}"))
                .build());
    assertThat(put.statusCode()).as(put.body()).isEqualTo(200);
    assertThat(json("/api/waters").get("waters")).hasSize(2);
    assertThat(server.wetside().keepWaters().find("boiler"))
        .contains(new Water("boiler", Temperature.ofCelsius(55), Water.Hardness.SOFT));
    HttpResponse<String> refused =
        server.postForm("/equipment/waters", "name=moat&temp=120&hardness=hard");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("between 0 and 100 °C", "value=\"moat\"");
    server.postForm("/equipment/waters/remove", "name=boiler");
    assertThat(json("/api/waters").get("waters")).hasSize(1);
  }
}
