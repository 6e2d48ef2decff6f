package org.wetside.web.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.web.OpenServer;
import org.wetside.web.bench.StoredLoad;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Processes over a real server and a real database. What is typed here is invented. */
class ProcessRoutesTest {
  private static final String MINE =
      "{\"name\":\"Harbour tank\",\"steps\":["
          + "{\"kind\":\"developer\",\"bottle\":\"D\",\"agitation\":\"30s, then 5s every 1:00\"},"
          + "{\"kind\":\"fixer\",\"bottle\":\"F\",\"time\":\"6:00\",\"afterwards\":\"back\"},"
          + "{\"kind\":\"wash\",\"time\":\"10:00\",\"light\":\"any\"}]}";

  private OpenServer server;
  private long load;

  @BeforeEach
  void open(@TempDir Path home) {
    load = StoredLoad.in(home);
    server = new OpenServer(home, Clock.systemUTC());
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

  private static JsonNode json(HttpResponse<String> answer, int status) {
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(status);
    return new JsonMapper().readTree(answer.body());
  }

  @Test
  void theBuiltInOnesAreListedWithUnitsInTheirNames() {
    JsonNode first = json(server.get("/api/processes"), 200).get("processes").get(0);
    assertThat(first.get("process").asString()).isEqualTo("small-tank");
    assertThat(first.get("builtIn").asBoolean()).isTrue();
    JsonNode developer = first.get("steps").get(0);
    // 30 s, then 5 s each minute (DV-S12); the time depends on the film
    assertThat(developer.get("initialSeconds").asDouble()).isEqualTo(30);
    assertThat(developer.get("everySeconds").asDouble()).isEqualTo(60);
    assertThat(developer.get("cycleSeconds").asDouble()).isEqualTo(5);
    assertThat(developer.get("seconds").isNull()).isTrue();
    assertThat(developer.get("agitation").asString()).isEqualTo("30 s, then 5 s every 60 s, tap");
    assertThat(developer.get("drainLeadSeconds").asDouble()).isEqualTo(15);
    assertThat(developer.get("standing").asString()).isEqualTo("published");
  }

  @Test
  void anOwnOneIsKeptChangedAndRemoved() {
    HttpResponse<String> kept = send("POST", "/api/processes", MINE);
    assertThat(json(kept, 201).get("process").asString()).isEqualTo("harbour-tank");
    assertThat(kept.headers().firstValue("Location")).contains("/api/processes/harbour-tank");
    assertThat(json(kept, 201).get("steps").get(1).get("backTo").asString()).isEqualTo("F");
    String slower = MINE.replace("6:00", "8:00");
    JsonNode changed = json(send("PUT", "/api/processes/harbour-tank", slower), 200);
    assertThat(changed.get("steps").get(1).get("seconds").asDouble()).isEqualTo(480);
    assertThat(json(server.get("/api/processes/harbour-tank"), 200)).isEqualTo(changed);
    assertThat(server.get("/api/processes/harbour-tank?text=yes").body())
        .contains("step: fixer", "time: 8:00", "from the load");
    assertThat(json(send("DELETE", "/api/processes/harbour-tank", ""), 200)).isEqualTo(changed);
    JsonNode gone = json(server.get("/api/processes/harbour-tank"), 404);
    assertThat(gone.get("exitCode").asInt()).isEqualTo(2);
  }

  @Test
  void whatIsWrongIsAProblemThatNamesEveryStep() {
    HttpResponse<String> refused =
        send("POST", "/api/processes", MINE.replace("6:00", "6").replace("10:00", "25h"));
    assertThat(refused.headers().firstValue("Content-Type").orElse(""))
        .startsWith("application/problem+json");
    JsonNode problem = json(refused, 400);
    assertThat(problem.get("exitCode").asInt()).isEqualTo(2);
    assertThat(problem.get("detail").asString()).contains("step 2, time", "step 3, time", "unit");
    assertThat(json(send("POST", "/api/processes", "{}"), 400).get("detail").asString())
        .contains("process name", "0 steps");
    assertThat(json(send("POST", "/api/processes", "{\"warmth\":1}"), 400).get("detail").asString())
        .contains("warmth");
    String builtIn = MINE.replace("\"name\"", "\"process\":\"rotary\",\"name\"");
    assertThat(json(send("POST", "/api/processes", builtIn), 400).get("detail").asString())
        .contains("built in");
    assertThat(json(send("PUT", "/api/processes/rotary", MINE), 400).get("detail").asString())
        .contains("built in");
    assertThat(send("DELETE", "/api/processes/rotary", "").statusCode()).isEqualTo(400);
    assertThat(send("PUT", "/api/processes/nowhere", MINE).statusCode()).isEqualTo(404);
  }

  @Test
  void aCopyIsMadeUnderItsOwnName() {
    JsonNode copy =
        json(send("POST", "/api/processes/rotary/copy", "{\"process\":\"my-drum\"}"), 201);
    assertThat(copy.get("name").asString()).isEqualTo("My drum");
    assertThat(copy.get("builtIn").asBoolean()).isFalse();
    assertThat(copy.get("steps"))
        .isEqualTo(json(server.get("/api/processes/rotary"), 200).get("steps"));
    assertThat(send("POST", "/api/processes/rotary/copy", "{\"process\":\"my-drum\"}").statusCode())
        .isEqualTo(400);
  }

  /** Times by the run's own rule: drain lead 15 s before 9:00, pour-in 10 s (DV-S12). */
  @Test
  void cuesOfAProcessAreAtTheirSeconds() {
    JsonNode cues = json(server.get("/api/cues?process=small-tank&development=9:00"), 200);
    List<JsonNode> drains = new ArrayList<>();
    for (JsonNode cue : cues.get("cues")) {
      boolean developer = cue.get("step").asInt() == 0;
      if (developer && cue.get("act").asString().equals("drain")) {
        drains.add(cue);
      }
      if (developer && cue.get("act").asString().equals("agitate")) {
        // the last cycle of 5 s is over before the drain begins
        assertThat(cue.get("stepSeconds").asDouble()).isLessThanOrEqualTo(520);
      }
    }
    assertThat(drains).hasSize(1);
    JsonNode drain = drains.get(0);
    assertThat(drain.get("stepSeconds").asDouble()).isEqualTo(525.0);
    assertThat(drain.get("atSeconds").asDouble()).isEqualTo(535.0);
  }

  @Test
  void cuesOfALoadTakeItsTimeOrTheOneThatIsSaid() {
    JsonNode own = json(server.get("/api/cues?load=" + load), 200);
    JsonNode same = json(server.get("/api/cues?load=" + load + "&development=9:00"), 200);
    assertThat(own).isEqualTo(same);
    JsonNode longer = json(server.get("/api/cues?load=" + load + "&development=10:30"), 200);
    assertThat(longer.get("totalSeconds").asDouble() - own.get("totalSeconds").asDouble())
        .isEqualTo(90);
  }

  @Test
  void aQuestionForCuesThatCannotBeMeantIsRefused() {
    assertRefused("", "say which process or load");
    assertRefused("?process=small-tank&load=" + load, "ask for one of them");
    assertRefused("?load=1234567890", "at most 9 digits");
    assertRefused("?load=three", "at most 9 digits");
    assertRefused("?load=987654321", "no such load");
    assertRefused("?process=small-tank", "developer time");
    assertRefused("?process=small-tank&development=9", "unit");
    assertRefused("?load=" + load + "&development=soon", "number and its unit");
    assertRefused("?process=nowhere&development=9:00", "must be one of");
  }

  private void assertRefused(String query, String says) {
    JsonNode problem = json(server.get("/api/cues" + query), 400);
    assertThat(problem.get("exitCode").asInt()).isEqualTo(2);
    assertThat(problem.get("detail").asString()).contains(says);
  }
}
