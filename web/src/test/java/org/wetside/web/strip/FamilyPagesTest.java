package org.wetside.web.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.web.OpenServer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Families of curves by page and by interface, and their times among the user's own. */
class FamilyPagesTest {
  private static final String ALL = "strip=1&strip=2&strip=3";

  private OpenServer server;

  @BeforeEach
  void open(@TempDir Path home) {
    server =
        new OpenServer(home, Clock.fixed(Instant.parse("2026-01-14T19:00:00Z"), ZoneOffset.UTC));
    strip("7:00", 0.50, "calibrated", "20C");
    strip("9:30", 0.60, "calibrated", "20C");
    strip("13:00", 0.70, "calibrated", "20C");
  }

  @AfterEach
  void close() {
    server.close();
  }

  private JsonNode strip(String minutes, double gamma, String light, String temp) {
    Map<String, Object> body = new LinkedHashMap<>();
    body.put("film", "TRI-X 400");
    body.put("developer", "D-76");
    body.put("dilution", "stock");
    body.put("minutes", minutes);
    body.put("temp", temp);
    body.put("vessel", "small");
    body.put("light", light);
    body.put("baseFog", "0.20");
    body.put("readings", InventedStrips.readings(gamma));
    HttpResponse<String> answer =
        server.postJson("/api/curves", JsonMapper.shared().writeValueAsString(body));
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(201);
    return JsonMapper.shared().readTree(answer.body());
  }

  private JsonNode json(String path) {
    HttpResponse<String> answer = server.get(path);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    return JsonMapper.shared().readTree(answer.body());
  }

  /** G = 1.05/(2.20 − 0.301 N − 0.40) (SE-S42, S55): 0.583 for N. */
  @Test
  void aFamilyGivesTheTimesForNAndNothingBeyondItself() {
    JsonNode family = json("/api/curves/family?curves=1,2,3");
    assertThat(family.get("curves")).hasSize(3);
    JsonNode normal = family.get("times").get(2);
    assertThat(normal.get("n").asInt()).isZero();
    assertThat(normal.get("contrast").asDouble()).isCloseTo(1.05 / 1.80, within(1e-9));
    assertThat(normal.get("minutes").asDouble()).isBetween(8.0, 9.6);
    assertThat(normal.get("minutesBand").get(0).asDouble())
        .isLessThan(normal.get("minutes").asDouble());
    JsonNode plusTwo = family.get("times").get(4);
    assertThat(plusTwo.get("contrast").asDouble()).isCloseTo(1.05 / 1.198, within(1e-9));
    assertThat(plusTwo.get("minutes").isNull()).isTrue();

    String page = server.get("/curves/family?" + ALL).body();
    assertThat(page)
        .contains("For a normal subject develop", "Contrast against time", "Speed against time")
        .contains("N−2 to N+2", "not determinable, the curves give", "seed 1");
  }

  @Test
  void aMeasuredTimeWinsOverPublishedOnes() {
    JsonNode before =
        json("/api/time?film=TRI-X+400&developer=D-76&dilution=stock&ei=400&temp=20C");
    assertThat(before.get("standing").asString()).isNotEqualTo("measured");
    HttpResponse<String> kept = server.postForm("/curves/family/times", ALL + "&n=0&ei2=400");
    assertThat(kept.statusCode()).as(kept.body()).isEqualTo(303);
    JsonNode after = json("/api/time?film=TRI-X+400&developer=D-76&dilution=stock&ei=400&temp=20C");
    assertThat(after.get("standing").asString()).isEqualTo("measured");
    JsonNode normal = json("/api/curves/family?curves=1,2,3").get("times").get(2);
    assertThat(after.get("seconds").asDouble())
        .isCloseTo(normal.get("minutes").asDouble() * 60, within(2.6));
    assertThat(server.get("/times").body()).contains("measured, curves 1, 2, 3");
  }

  @Test
  void theSameTwiceIsSaidAndABadIndexKeepsWhatWasTyped() {
    String body = "{\"curves\":[1,2,3],\"n\":0,\"ei\":400}";
    JsonNode first =
        JsonMapper.shared().readTree(server.postJson("/api/curves/times", body).body());
    assertThat(first.get("kept").get(0).get("standing").asString()).isEqualTo("measured");
    JsonNode second =
        JsonMapper.shared().readTree(server.postJson("/api/curves/times", body).body());
    assertThat(second.get("alreadyThere").asBoolean()).isTrue();

    HttpResponse<String> refused = server.postForm("/curves/family/times", ALL + "&n=0&ei2=4oo");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("Not kept yet", "ei2-message", "value=\"4oo\"");
    assertThat(server.postJson("/api/curves/times", "{\"curves\":[1,2,3],\"n\":2}").statusCode())
        .isEqualTo(422);
  }

  @Test
  void whatIsNoFamilyIsRefusedWithTheReason() {
    strip("10:00", 0.6, "calibrated", "24C");
    assertThat(server.get("/curves/family?strip=1&strip=4").body()).contains("one temperature");
    assertThat(server.get("/curves/family?strip=1").body()).contains("two or more");
    assertThat(server.get("/curves/family?strip=1&strip=99").body())
        .contains("there is no such curve");
    HttpResponse<String> comma = server.get("/curves/family?" + ALL + "&range=1,05");
    assertThat(comma.statusCode()).isEqualTo(422);
    assertThat(comma.body()).contains("range-message", "value=\"1,05\"");
    assertThat(server.get("/curves/family").body()).contains("Choose two or more times");
  }

  @Test
  void relativeLightGivesTimesButNoSpeed() {
    JsonNode first = strip("7:00", 0.50, "relative", "20C");
    strip("13:00", 0.70, "relative", "20C");
    assertThat(first.get("curve").get("exposureIndex").isNull()).isTrue();
    assertThat(first.get("curve").get("remarks").toString()).contains("relative");
    JsonNode family = json("/api/curves/family?curves=4,5");
    assertThat(family.get("times").get(2).get("minutes").isNull()).isFalse();
    assertThat(family.get("times").get(2).get("exposureIndex").isNull()).isTrue();
    assertThat(server.get("/curves/family?strip=4&strip=5").body())
        .doesNotContain("Speed against time");
  }

  @Test
  void aStripIsWrittenAnewAndTakenAway() {
    assertThat(json("/api/curves").get("curves")).hasSize(3);
    assertThat(json("/api/curves/2").get("strip").get("minutes").asDouble())
        .isCloseTo(9.5, within(1e-9));
    assertThat(server.get("/api/curves/x").statusCode()).isEqualTo(404);
    HttpResponse<String> bad =
        server.postJson("/api/curves", "{\"film\":\"TRI-X 400\",\"readings\":\"1;2\"}");
    assertThat(bad.statusCode()).isEqualTo(400);
    assertThat(bad.body()).contains("developer", "development time", "light");
  }
}
