package org.wetside.web.wash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.web.OpenServer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class WashRoutesTest {
  private static final String SIX = "method=fills&volume=500mL&fills=6&start=60g/L&carryOver=10mL";

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

  private JsonNode json(String path) {
    HttpResponse<String> answer = server.get(path);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    return JsonMapper.shared().readTree(answer.body());
  }

  @Test
  void theRuleOfFillsIsGivenAndNamedForWhatItIs() {
    JsonNode wash = json("/api/wash?" + SIX);
    double[] rule = {1.176, 0.02307, 0.0004523, 8.869e-6, 1.739e-7, 3.410e-9};
    for (int fill = 0; fill < 6; fill++) {
      assertThat(wash.get("equilibriumGramsPerLitre").get(fill).asDouble())
          .isCloseTo(rule[fill], within(5e-4 * rule[fill]));
    }
    assertThat(wash.get("residueGramsPerSquareMetre").isNull()).isTrue();
    assertThat(wash.get("verdict").isNull()).isTrue();
    assertThat(wash.get("text").asString()).contains("rule of fills", "not what is on the film");
  }

  @Test
  void bothHalfTimesLeaveFarMoreThanTheRule() {
    JsonNode wash = json("/api/wash?" + SIX + "&dwell=20s");
    double rule = wash.get("equilibriumResidueGramsPerSquareMetre").get(5).asDouble();
    for (String halfTime : new String[] {"halfTime15Seconds", "halfTime60Seconds"}) {
      JsonNode residues = wash.get("residueGramsPerSquareMetre").get(halfTime);
      assertThat(residues).hasSize(6);
      assertThat(residues.get(5).asDouble()).isGreaterThan(1e6 * rule);
    }
    assertThat(wash.get("text").asString()).contains("at least", "the limit is 0.014 g/m²");
    assertThat(wash.get("notes").toString()).contains("lower bound", "hardener");
  }

  @Test
  void waterRunsThroughTheTank() {
    JsonNode wash = json("/api/wash?method=running&volume=500mL&flow=1L/min&minutes=20");
    assertThat(wash.get("waterMl").asDouble()).isCloseTo(20_500, within(1e-6));
    assertThat(wash.get("byHalfTime").get(0).get("timesTheRule").isNull()).isTrue();
    JsonNode slow = wash.get("byHalfTime").get(1);
    assertThat(slow.get("residueGramsPerSquareMetre").asDouble())
        .isGreaterThan(slow.get("halfTimeRuleGramsPerSquareMetre").asDouble());
  }

  @Test
  void everyWayOnFileSaysItsWaterItsMinutesAndWhatStays() {
    JsonNode washes = json("/api/washes?volume=500mL&rolls=2").get("washes");
    assertThat(washes).hasSize(6);
    assertThat(washes.get(0).get("method").asString()).isEqualTo("changes-10");
    for (JsonNode wash : washes) {
      assertThat(wash.get("waterMl").asDouble()).isGreaterThan(500);
      assertThat(wash.get("lengthSeconds").asDouble()).isGreaterThan(60);
      assertThat(wash.get("byHalfTime")).hasSize(2);
    }
    assertThat(washes.toString()).contains("wash aid as plain water");
  }

  @Test
  void dryingSaysWhenTheFilmMayBeTouched() {
    JsonNode drying = json("/api/drying?volume=603mL&hung=21:40");
    assertThat(drying.get("agentMl").asDouble()).isCloseTo(3, within(1e-9));
    assertThat(drying.get("dilutionStanding").asString()).isEqualTo("from memory");
    assertThat(drying.get("ways").get(0).get("doNotTouchUntil").asString()).isEqualTo("01:40");
    assertThat(drying.get("ways").get(1).get("doNotTouchUntil").asString()).isEqualTo("22:00");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          method=fills&volume=500mL&fills=0                     | fills|between 1 and 200
          method=fills&volume=500mL&fills=2.5                   | 2.5|whole number
          method=fills&volume=500mL&fills=3&dwell=0s            | 0 s|above 0 s
          method=fills&volume=0mL&fills=3                       | 0 mL|above 0 mL
          method=fills&volume=500&fills=3                       | 500|say the unit
          method=fills&volume=500mL&fills=3&carryOver=2mL       | 2 mL|more than the 2 mL
          method=fills&volume=500mL&fills=3&start=0g/L          | 0 g/L|above 0
          method=fills&volume=500mL&fills=3&start=60            | 60|g/L
          method=fills&volume=500mL&fills=3&rolls=0             | 0|above 0
          method=fills&volume=500mL&fills=3&temp=1C             | 1 °C|between 1.7 and 40 °C
          method=fills&volume=500mL&fills=3&flow=1L/min         | 1L/min|method running
          method=running&volume=500mL&flow=0L/min&minutes=20    | 0 L/min|above 0 L/min
          method=running&volume=500mL&minutes=20                | flow of water|for example
          method=running&volume=500mL&flow=1L/min&minutes=-5    | -5|cannot be negative
          method=bathtub&volume=500mL                           | bathtub|changes-10
          """)
  void whatCannotBeIsRefusedWithItsLimit(String query, String given, String limit) {
    HttpResponse<String> refused = server.get("/api/wash?" + query);
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body()).contains(given.strip(), limit.strip());
  }

  @Test
  void thePageAnswersAndKeepsWhatWasTyped() {
    assertThat(server.get("/shelf/wash").body())
        .contains("Ten changes of water", "Wash", "do not touch until", "23:", "svg");
    assertThat(server.get("/shelf/wash?method=fills&volume=500&fills=6&dwell=20s").body())
        .contains("0.0094", "0.58", "half-time 60 s", "1.3·10⁻¹⁰");
    assertThat(server.get("/shelf/wash?method=fills&volume=500&fills=6").body())
        .contains("say how long a fill", "not what is on the film");
    HttpResponse<String> refused =
        server.get("/shelf/wash?method=running&volume=500&flow=-1&minutes=x");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("-1 L/min", "at least 0", "value=\"x\"");
  }
}
