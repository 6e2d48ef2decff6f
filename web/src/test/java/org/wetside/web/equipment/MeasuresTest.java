package org.wetside.web.equipment;

import static org.assertj.core.api.Assertions.assertThat;

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

/** What is weighed and measured with is written down once and taken by every formula. */
class MeasuresTest {
  private static final String HERE = "/equipment/measures";

  private OpenServer server;

  @BeforeEach
  void open(@TempDir Path home) {
    Clock clock = Clock.fixed(Instant.parse("2026-01-14T19:00:00Z"), ZoneOffset.UTC);
    server = new OpenServer(home, clock);
  }

  @AfterEach
  void close() {
    server.close();
  }

  private HttpResponse<String> put(String path, String json) {
    return server.send(
        HttpRequest.newBuilder(server.at(path))
            .header("Content-Type", "application/json")
            .PUT(HttpRequest.BodyPublishers.ofString(json))
            .build());
  }

  private HttpResponse<String> delete(String path) {
    return server.send(HttpRequest.newBuilder(server.at(path)).DELETE().build());
  }

  @Test
  void theBalanceOfTheHouseIsTakenWhereNothingElseIsSaid() {
    String asked = "/shelf/formulas/D-76?make=700";
    assertThat(server.get(asked).body())
        .contains("this balance cannot weigh metol", "when not said: 0.1 g, usual at home");

    assertThat(server.postForm(HERE + "/balance", "step=0.01").statusCode()).isEqualTo(303);

    assertThat(server.get(HERE).body()).contains("A balance that shows <b>0.01 g</b>");
    assertThat(server.get(asked).body())
        .contains("this balance can weigh everything", "0.01 g, as under Equipment");
    assertThat(server.get("/api/formulas/D-76?make=700mL").body())
        .contains("\"balanceStepGrams\":0.01");
    assertThat(server.get(asked + "&balance=0.1").body()).contains("cannot weigh metol");
    server.postForm(HERE + "/balance", "step=");
    assertThat(server.get(asked).body()).contains("usual at home");
  }

  @Test
  void aStepThatNoBalanceHasIsRefusedWithTheReasonAndNothingIsLost() {
    server.postForm(HERE + "/balance", "step=0.05");
    for (String step : new String[] {"0", "0g", "-0.1", "200"}) {
      HttpResponse<String> refused = server.postForm(HERE + "/balance", "step=" + step);
      assertThat(refused.statusCode()).as(step).isEqualTo(422);
      assertThat(refused.body()).contains("balance step", "value=\"" + step + "\"");
    }
    assertThat(server.postForm(HERE + "/balance", "step=0").body())
        .contains("it must be more than 0 g");
    HttpResponse<String> zero = put("/api/balance", "{\"stepGrams\":0}");
    assertThat(zero.statusCode()).isEqualTo(400);
    assertThat(zero.body()).contains("balance step", "it must be more than 0 g");
    assertThat(server.get("/api/measures").body()).contains("\"balanceStepGrams\":0.05");
  }

  @Test
  void theMeasuresOfTheHouseAreTheOnesToTake() {
    assertThat(
            server
                .postForm(HERE, "name=red+syringe&holds=100&division=5")
                .headers()
                .firstValue("Location")
                .orElseThrow())
        .endsWith(HERE);
    server.postForm(HERE, "name=&holds=1000&division=10");

    assertThat(server.get(HERE).body())
        .contains("red syringe", "measure of 1000 mL", "±2.5 mL", "two measures");
    assertThat(server.get("/shelf/formulas/D-76?make=700&balance=0.1").body())
        .contains("in the red syringe, ±2.5 mL", "the 2 under Equipment");
    server.postForm(HERE + "/remove", "name=Red+Syringe");
    assertThat(server.get(HERE).body()).doesNotContain("red syringe</th>");
  }

  @Test
  void aMeasureThatCannotBeReadIsShownAgainAsTyped() {
    HttpResponse<String> refused = server.postForm(HERE, "name=odd&holds=10&division=20");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("it must be more than 0 mL and at most its 10 mL", "value=\"odd\"");
    assertThat(server.postForm(HERE, "name=odd&holds=10&division=0").statusCode()).isEqualTo(422);
    assertThat(server.postForm(HERE, "name=odd&holds=&division=1").statusCode()).isEqualTo(422);
  }

  @Test
  void theSameOverHttp() {
    assertThat(put("/api/measures", "{\"name\":\"tall\",\"holdsMl\":50,\"divisionMl\":1}").body())
        .contains("\"name\":\"tall\"", "\"balanceStepGrams\":null");
    assertThat(put("/api/measures", "{\"name\":\"tall\",\"holdsMl\":50}").statusCode())
        .isEqualTo(400);
    assertThat(put("/api/balance", "{\"stepGrams\":0.1}").body()).contains("0.1");
    assertThat(delete("/api/measures/tall").body()).contains("\"measures\":[]");
    assertThat(delete("/api/measures/tall").statusCode()).isEqualTo(404);
    assertThat(delete("/api/balance").statusCode()).isEqualTo(200);
    assertThat(delete("/api/balance").statusCode()).isEqualTo(404);
  }
}
