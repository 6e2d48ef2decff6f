package org.wetside.web.equipment;

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
import org.wetside.web.OpenServer;

/** Tanks and thermometers on their page and over HTTP. All are invented. */
class EquipmentPagesTest {
  private static final String TANK =
      "name=Double&vessel=small&most-135=2&each-135=300&most-120=1&each-120=500&holds=650";

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

  @Test
  void anEmptyPageAsksForTheFirstTank() {
    assertThat(server.get("/equipment").body()).contains("No tank is written down");
  }

  @Test
  void aTankIsKeptChangedAndTakenAway() {
    assertThat(server.postForm("/equipment/tank", TANK).statusCode()).isEqualTo(303);
    assertThat(server.get("/equipment").body())
        .contains("One tank, no thermometers.", "2 × 135, 300 mL each; 1 × 120, 500 mL each");

    server.postForm("/equipment/tank", TANK.replace("holds=650", "holds=680"));
    assertThat(server.wetside().keepTanks().all())
        .singleElement()
        .satisfies(tank -> assertThat(tank.holds().millilitres()).isEqualTo(680));

    server.postForm("/equipment/tank/remove", "name=Double");
    assertThat(server.wetside().keepTanks().all()).isEmpty();
  }

  @Test
  void aTankThatCannotBeIsShownAgainAsTyped() {
    HttpResponse<String> refused =
        server.postForm("/equipment/tank", TANK.replace("holds=650", "holds=much"));

    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("value=\"much\"", "value=\"Double\"", "value=\"500\"");
    assertThat(server.wetside().keepTanks().all()).isEmpty();
  }

  @Test
  void aThermometerComparedInMeltingIceCorrectsItsReadings() {
    server.postForm("/equipment/tank", TANK);
    server.postForm("/equipment/thermometer", "name=probe&shown=&truth=&how=");
    assertThat(server.get("/equipment").body()).contains("<b>probe</b> was never compared");

    server.postForm("/equipment/thermometer", "name=probe&shown=0.3&truth=0&how=ice+point");

    assertThat(server.get("/equipment").body())
        .contains("−0.3 K", "at 0 °C on 14 January, ice point")
        .doesNotContain("never compared");
    assertThat(server.wetside().keepThermometers().find("probe").orElseThrow().offset())
        .hasValueSatisfying(
            offset -> assertThat(offset.correction().kelvins()).isEqualTo(-0.3, within(1e-12)));
  }

  @Test
  void halfAComparisonIsNoComparison() {
    HttpResponse<String> refused =
        server.postForm("/equipment/thermometer", "name=probe&shown=0.3&truth=&how=ice");

    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("say what it showed and what was true", "value=\"0.3\"");
    assertThat(server.wetside().keepThermometers().all()).isEmpty();
  }

  @Test
  void theSameOverHttp() {
    HttpResponse<String> tank =
        server.postJson(
            "/api/tanks",
            "{\"name\":\"Single\",\"vessel\":\"small\",\"rooms\":[{\"format\":\"135\",\"most\":1,\"eachMl\":300}],\"holdsMl\":320}");
    assertThat(tank.statusCode()).as(tank.body()).isEqualTo(201);
    assertThat(server.get("/api/tanks").body()).contains("\"holdsMl\":320.0");
    assertThat(server.postJson("/api/thermometers", "{\"name\":\"rod\"}").statusCode())
        .isEqualTo(201);
    assertThat(server.get("/api/thermometers").body()).contains("\"name\":\"rod\"");
    assertThat(
            server
                .send(HttpRequest.newBuilder(server.at("/api/tanks/Single")).DELETE().build())
                .body())
        .contains("\"tanks\":[]");
    assertThat(
            server
                .send(HttpRequest.newBuilder(server.at("/api/tanks/Single")).DELETE().build())
                .statusCode())
        .isEqualTo(404);
  }

  @Test
  void aTankHasItsOwnListForClosingIt() {
    String page = "/equipment/tanks/Double/checks";
    server.postForm("/equipment/tank", TANK);
    assertThat(server.get("/equipment").body()).contains(page);
    assertThat(server.get(page).body()).contains("Reel dry and whole", "* Lid locked");

    server.postForm(page, "do=keep&checks=Spring+on+the+reel%0A*+Lid+screwed+home");
    assertThat(server.get("/api/tanks/Double").body())
        .contains(
            "{\"id\":\"own-spring-on-the-reel\",\"text\":\"Spring on the reel\",\"always\":false}",
            "\"text\":\"Lid screwed home\",\"always\":true");

    String long81 = "x".repeat(81);
    HttpResponse<String> refused = server.postForm(page, "do=keep&checks=" + long81);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains(long81, "1 to 80 characters");

    server.postForm(page, "do=usual&checks=Spring");
    assertThat(server.wetside().keepTankChecks().of("Double")).hasSize(6);
    assertThat(server.get("/equipment/tanks/Triple/checks").statusCode()).isEqualTo(404);
  }

  @Test
  void onlyTheListIsSaidOverHttp() {
    server.postForm("/equipment/tank", TANK);
    HttpResponse<String> put =
        server.send(
            HttpRequest.newBuilder(server.at("/api/tanks/Double"))
                .header("Content-Type", "application/json")
                .PUT(
                    HttpRequest.BodyPublishers.ofString(
                        "{\"checks\":[{\"text\":\"Lid\",\"always\":true}]}"))
                .build());
    assertThat(put.body()).contains("\"holdsMl\":650.0", "\"id\":\"own-lid\"");
  }
}
