package org.wetside.acceptance.kill;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The real process is killed at random moments of a real run: whatever was answered is there again,
 * once, and the run has gone on by the clock.
 */
class KilledTest {
  private static final Pattern ENDS = Pattern.compile("\"endsAt\":\"([^\"]+)\"");
  private static final Pattern STARTED = Pattern.compile("\"startedAt\":\"([^\"]+)\"");

  @TempDir Path home;

  @Test
  void nothingThatWasAnsweredIsLost() throws IOException, InterruptedException {
    campaign(20);
  }

  @Test
  @Tag("long")
  void nothingThatWasAnsweredIsLostTwoHundredTimes() throws IOException, InterruptedException {
    campaign(200);
  }

  private void campaign(int kills) throws IOException, InterruptedException {
    Random random = new Random(26);
    RealServer server = RealServer.start(home);
    prepare(server);
    List<String> answered = new ArrayList<>();
    send(server, "start-00000001", "started", ",\"confirmed\":true");
    String before = server.get("/api/runs/1");
    String started = first(STARTED, before);
    Instant ends = Instant.parse(first(ENDS, before));
    for (int kill = 0; kill < kills; kill++) {
      for (int note = 0; note < 1 + random.nextInt(4); note++) {
        String id = "note-" + kill + "-" + note + "-of-many";
        HttpResponse<String> answer =
            send(server, id, "note", ",\"step\":0,\"text\":\"" + id + "\"");
        if (answer.statusCode() == 200) {
          answered.add(id);
        }
      }
      Thread.sleep(random.nextInt(60));
      server.kill();
      server = RealServer.start(home);
      String after = server.get("/api/runs/1");
      for (String id : answered) {
        assertThat(after.split("\"id\":\"" + id + "\"", -1)).as(id).hasSize(2);
      }
      assertThat(first(STARTED, after)).isEqualTo(started);
      assertThat(Duration.between(ends, Instant.parse(first(ENDS, after))).abs())
          .isLessThan(Duration.ofSeconds(1));
    }
    assertThat(answered).hasSizeGreaterThanOrEqualTo(kills);
    assertThat(server.get("/api/runs/1")).contains("\"interrupted\":true");
    server.kill();
  }

  private static void prepare(RealServer server) throws IOException, InterruptedException {
    String room = "{\"format\":\"135\",\"most\":2,\"eachMl\":300}";
    assertThat(
            server
                .post(
                    "/api/tanks", "{\"name\":\"Double\",\"rooms\":[" + room + "],\"holdsMl\":650}")
                .statusCode())
        .isEqualTo(201);
    assertThat(
            server
                .post(
                    "/api/rolls",
                    "{\"number\":\"A-1\",\"format\":\"135\",\"frames\":36,\"film\":\"TRI-X 400\",\"ei\":400}")
                .statusCode())
        .isLessThan(300);
    assertThat(
            server
                .post(
                    "/api/loads",
                    "{\"rolls\":[\"A-1\"],\"tank\":\"Double\",\"developer\":\"D-76\","
                        + "\"temp\":\"20C\"}")
                .statusCode())
        .isEqualTo(201);
    assertThat(server.post("/api/runs", "{\"load\":1}").statusCode()).isEqualTo(201);
  }

  private static HttpResponse<String> send(RealServer server, String id, String kind, String more)
      throws IOException, InterruptedException {
    return server.post(
        "/api/runs/1/events",
        "{\"id\":\""
            + id
            + "\",\"kind\":\""
            + kind
            + "\",\"occurredAt\":\""
            + Instant.now()
            + "\",\"screen\":\"laptop\""
            + more
            + "}");
  }

  private static String first(Pattern pattern, String json) {
    Matcher matcher = pattern.matcher(json);
    assertThat(matcher.find()).as(pattern + " in " + json).isTrue();
    return matcher.group(1);
  }
}
