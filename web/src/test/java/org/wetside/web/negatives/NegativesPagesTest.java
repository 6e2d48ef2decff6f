package org.wetside.web.negatives;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.AfterPouring;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.web.OpenServer;
import org.wetside.web.bench.StoredLoad;

/** The Negatives after a run of an hour that the server led. */
class NegativesPagesTest {
  private final MovedClock clock = new MovedClock(Instant.parse("2026-01-14T19:00:00Z"));
  private OpenServer server;

  @BeforeEach
  void open(@TempDir Path home) {
    long load = StoredLoad.in(home);
    server = new OpenServer(home, clock);
    server
        .wetside()
        .addBottle()
        .add(
            BottleLabel.of("D", "soup", BottleRole.STOCK, BathKind.DEVELOPER, Volume.ofLitres(1))
                .with(AfterPouring.ONE_SHOT),
            Volume.ofLitres(1));
    server.postJson("/api/runs", "{\"load\":" + load + "}");
  }

  @AfterEach
  void close() {
    server.close();
  }

  private void send(String id, String kind, String more) {
    HttpResponse<String> answer =
        server.postJson(
            "/api/runs/1/events",
            "{\"id\":\"event-000"
                + id
                + "\",\"kind\":\""
                + kind
                + "\",\"occurredAt\":\""
                + clock.instant()
                + "\",\"screen\":\"laptop\","
                + more
                + "}");
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
  }

  private void run() {
    send("1", "started", "\"confirmed\":true");
    clock.pass(Duration.ofMinutes(3));
    send("2", "reading taken", "\"step\":0,\"temperatureC\":19.2,\"confirmed\":true");
    send("3", "note", "\"step\":0,\"text\":\"the heater was off\"");
    send("4", "mishap", "\"step\":0,\"what\":\"kettle fell over\"");
    clock.pass(Duration.ofHours(2));
    assertThat(server.get("/api/runs/1").body()).contains("\"phase\":\"finished\"");
  }

  @Test
  void beforeAnyRunEndsThereAreNone() {
    assertThat(server.get("/negatives").body()).contains("<b>no negatives yet</b>");
    assertThat(server.get("/negatives/A-1").body()).contains("nothing was poured yet");
    assertThat(server.postForm("/negatives/A-1/file", "sleeve=page+3").statusCode()).isEqualTo(422);
  }

  @Test
  void theRecordSaysEverythingThatWasDone() {
    run();
    assertThat(server.get("/negatives").body())
        .contains("was hung last", "Two rolls have no sleeve");
    assertThat(server.get("/negatives/A-1").body())
        .contains("was in soup 1+1, 20 °C for <b>9:00</b>, on 14 January")
        .contains("Double", "600 mL", "A-2", "leaflet", "19.2 °C in the developer")
        .contains(
            "the heater was off", "kettle fell over", "bottle D, 300 mL", "planned time from");
    assertThat(server.get("/api/rolls/A-1").body())
        .contains("\"plannedSeconds\":540.0,\"actualSeconds\":540.0", "\"correctedC\":19.2")
        .contains("\"sharedWith\":[\"A-2\"]", "\"state\":\"processed\"");
  }

  @Test
  void isFoundByWhatWasDoneToIt() {
    run();
    for (String word : new String[] {"heater", "kettle", "soup", "bottle+D", "2026", "Doub"}) {
      assertThat(server.get("/negatives?find=" + word).body())
          .as(word)
          .contains("<b>Two rolls</b> have");
    }
    assertThat(server.get("/negatives?find=elephant").body()).contains("No record has all these");
  }

  @Test
  void isFiledAndNoted() {
    run();
    assertThat(server.postForm("/negatives/A-1/file", "sleeve=folder+3%2C+page+12").statusCode())
        .isEqualTo(303);
    assertThat(server.get("/negatives/A-1").body()).contains("are in <b>folder 3, page 12</b>");
    String tooLong = "x".repeat(81);
    HttpResponse<String> refused = server.postForm("/negatives/A-1/file", "sleeve=" + tooLong);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("at most 80", "value=\"" + tooLong);
    assertThat(server.postForm("/negatives/A-1/note", "note=thin+shadows").statusCode())
        .isEqualTo(303);
    assertThat(server.get("/negatives/A-1").body()).contains(">thin shadows</textarea>");
    assertThat(server.get("/negatives?find=shadows").body()).contains("<b>One roll</b> has");
    assertThat(patch("{\"sleeve\":\"folder 4\"}").body()).contains("\"sleeve\":\"folder 4\"");
    assertThat(patch("{\"number\":\"B-1\"}").statusCode()).isEqualTo(409);
    assertThat(server.get("/negatives/B-1").statusCode()).isEqualTo(404);
  }

  private HttpResponse<String> patch(String json) {
    return server.send(
        HttpRequest.newBuilder(server.at("/api/rolls/A-1"))
            .header("Content-Type", "application/json")
            .method("PATCH", HttpRequest.BodyPublishers.ofString(json))
            .build());
  }
}
