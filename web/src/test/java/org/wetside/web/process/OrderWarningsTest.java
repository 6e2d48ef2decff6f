package org.wetside.web.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.core.process.StepKind;
import org.wetside.web.OpenServer;
import org.wetside.web.bench.StoredLoad;

/** An acid stop before an alkaline fixer (CH-S14 p.106): warned of, and a rinse offered. */
class OrderWarningsTest {
  private static final String NAMED = "acid stop before an alkaline fixer";
  private OpenServer server;
  private long load;

  @BeforeEach
  void open(@TempDir Path home) {
    load = StoredLoad.in(home);
    server =
        new OpenServer(home, Clock.fixed(Instant.parse("2026-01-14T19:00:00Z"), ZoneOffset.UTC));
    put("F", "TF-3", "fixer");
    put("S", "SB-1", "stop bath");
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

  @Test
  void theProcessNamesBothBathsTheReasonAndTheSourceAndOffersARinse() {
    assertThat(server.get("/processes/small-tank").body())
        .contains("bottle F, TF-3", "bottle S, SB-1", "CH-S14", "Add a rinse before step 3");
    assertThat(server.get("/api/processes/small-tank").body())
        .contains("\"warnings\":[{\"step\":3,", "\"rinse\":true", "CH-S14, p.106");
  }

  @Test
  void theRinseGoesIntoACopyOfABuiltInProcessOnceAndTheWarningIsGone() {
    HttpResponse<String> gone = server.postForm("/processes/small-tank/rinse", "before=3");
    assertThat(gone.headers().firstValue("Location")).contains("/processes/small-tank-rinse");
    server.postForm("/processes/small-tank/rinse", "before=3");

    assertThat(server.wetside().findProcess().of("small-tank-rinse").steps())
        .extracting(step -> step.kind())
        .startsWith(StepKind.DEVELOPER, StepKind.STOP_BATH, StepKind.RINSE, StepKind.FIXER);
    assertThat(server.get("/api/processes/small-tank-rinse").body()).contains("\"warnings\":[]");
    assertThat(server.wetside().findProcess().find("small-tank-rinse-2")).isEmpty();
  }

  @Test
  void aLoadIsWarnedOfAndIsLedByTheProcessWithTheRinse() {
    String path = "/loads/" + load;
    assertThat(server.get(path).body()).contains("Add a rinse before step 3");
    server.postForm(path + "/rinse", "before=3");

    assertThat(server.get("/api" + path).body())
        .contains("\"process\":\"small-tank-rinse\"", "\"warnings\":[]");
    assertThat(server.get(path).body()).doesNotContain("Add a rinse");
  }

  @Test
  void aRinseThatIsNotNeededOrHasNoPlaceIsRefused() {
    String path = "/api/processes/small-tank/rinse";
    for (String body : new String[] {"{\"before\":1}", "{\"before\":99}", "{}", "{\"before\":4}"}) {
      HttpResponse<String> refused = server.postJson(path, body);
      assertThat(refused.statusCode()).as(body).isEqualTo(400);
      assertThat(refused.body()).contains("step for the rinse");
    }
  }

  @Test
  void anAcidFixerIsNotWarnedOf() {
    server.send(java.net.http.HttpRequest.newBuilder(server.at("/api/bottles/F")).DELETE().build());
    put("F", "F-24", "fixer");
    assertThat(server.get("/api/processes/small-tank").body())
        .contains("\"warnings\":[]")
        .doesNotContain(NAMED);
  }
}
