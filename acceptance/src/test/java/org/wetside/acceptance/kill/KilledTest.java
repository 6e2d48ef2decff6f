package org.wetside.acceptance.kill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.core.run.Placement;
import org.wetside.core.run.RunEvent;
import org.wetside.core.run.RunState;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * The real process is killed at random moments of real runs, also while an event is on its way to
 * it: whatever was answered is there again, once and as it was answered, what was refused is not,
 * and every deadline stands where it stood.
 */
class KilledTest {
  /** A moment is stored to the millisecond. */
  private static final int ROUNDED_MILLISECONDS = 2;

  private static final int MOST_MILLISECONDS_BEFORE_A_KILL = 400;
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path home;
  @TempDir Path copies;

  private final Random random = new Random(26);
  private final RichEvents events = new RichEvents(random);

  /** As it was shown when it was answered, by its id. */
  private final Map<String, JsonNode> answered = new LinkedHashMap<>();

  private final Set<String> refused = new HashSet<>();
  private final Set<String> kinds = new HashSet<>();
  private int answers;
  private int run;

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
    RealServer server = RealServer.start(home);
    tank(server);
    JsonNode shown = anotherRun(server);
    for (int kill = 0; kill < kills; kill++) {
      if (nearlyOver(shown)) {
        shown = sent(server, events.event("abandoned", 0, "\"reason\":\"another one\""), shown);
        shown = anotherRun(server);
      }
      for (int event = 0; event < 1 + random.nextInt(3); event++) {
        shown = sent(server, events.next(shown), shown);
      }
      String late = events.next(shown);
      CompletableFuture<HttpResponse<String>> onItsWay = server.postLater(address(), late);
      Thread.sleep(random.nextInt(MOST_MILLISECONDS_BEFORE_A_KILL));
      server.kill();
      if (onItsWay.handle((answer, lost) -> lost == null).join()) {
        shown = taken(late, onItsWay.join(), shown);
      }
      RunState left = Disk.run(home, copies, run);
      isAllThere(left);
      foldsToWhatWasShown(left, shown);
      server = RealServer.start(home);
      JsonNode after = look(server);
      standsWhere(after, Placement.of(left, Instant.EPOCH));
      assertThat(after.get("interrupted").asBoolean()).isTrue();
      shown = after;
    }
    assertThat(answers).isGreaterThanOrEqualTo(kills);
    assertThat(kinds)
        .contains("note", "reading taken", "step begun", "lengthened", "step drained", "undone");
    server.kill();
  }

  /** Each event that was answered once, as it was shown; none that was refused. */
  private void isAllThere(RunState left) {
    Map<String, RunEvent> stored = new LinkedHashMap<>();
    for (RunEvent event : left.events()) {
      assertThat(stored.put(event.id(), event)).as("twice: " + event).isNull();
      assertThat(refused).doesNotContain(event.id());
    }
    answered.forEach(
        (id, as) -> {
          assertThat(stored).as("answered, then lost: " + as).containsKey(id);
          RunEvent event = Objects.requireNonNull(stored.get(id));
          assertThat(
                  List.of(event.sequence(), event.kind().word(), event.step(), event.occurredAt()))
              .isEqualTo(
                  List.of(
                      as.get("sequence").asLong(),
                      as.get("kind").asString(),
                      as.get("step").asInt(),
                      Instant.parse(as.get("occurredAt").asString())));
        });
  }

  /** Reading again what had been stored at the last answer gives what that answer showed. */
  private void foldsToWhatWasShown(RunState left, JsonNode shown) {
    int known = shown.get("sequence").asInt();
    assertThat(left.sequence()).isGreaterThanOrEqualTo(known);
    RunState again = RunState.replay(left.plan(), left.events().subList(0, known));
    assertThat(again.phase().word()).isEqualTo(shown.get("phase").asString());
    assertThat(again.current()).isEqualTo(shown.get("currentStep").asInt());
    standsWhere(shown, Placement.of(again, Instant.EPOCH));
    for (JsonNode event : shown.get("events")) {
      String id = event.get("id").asString();
      boolean stands = !again.notedBecause().containsKey(id) && !again.takenBack().contains(id);
      assertThat(event.get("applied").asBoolean()).as(id).isEqualTo(stands);
    }
  }

  private static void standsWhere(JsonNode shown, Placement moments) {
    for (int i = 0; i < moments.steps().size(); i++) {
      JsonNode step = shown.get("steps").get(i);
      Placement.Moments expected = moments.steps().get(i);
      at(step, "beginAt", expected.begin());
      at(step, "fullAt", expected.full());
      at(step, "drainAt", expected.drain());
      at(step, "endAt", expected.end());
    }
  }

  private static void at(JsonNode step, String field, Instant expected) {
    assertThat(Instant.parse(step.get(field).asString()))
        .as(field + " of the " + step.get("word").asString())
        .isCloseTo(expected, within(ROUNDED_MILLISECONDS, ChronoUnit.MILLIS));
  }

  private JsonNode sent(RealServer server, String event, JsonNode shown)
      throws IOException, InterruptedException {
    return taken(event, server.post(address(), event), shown);
  }

  /** Keeps what was answered; gives how the run stands by the answer. */
  private JsonNode taken(String event, HttpResponse<String> answer, JsonNode shown) {
    String id = JSON.readTree(event).get("id").asString();
    assertThat(answer.statusCode()).as(event + answer.body()).isIn(200, 409);
    if (answer.statusCode() == 409) {
      refused.add(id);
      return shown;
    }
    JsonNode run = JSON.readTree(answer.body()).get("snapshot");
    for (JsonNode one : run.get("events")) {
      if (one.get("id").asString().equals(id)) {
        answered.put(id, one);
        answers++;
        kinds.add(one.get("kind").asString());
      }
    }
    assertThat(answered).as(event).containsKey(id);
    return run;
  }

  private static boolean nearlyOver(JsonNode run) {
    boolean over = List.of("finished", "abandoned").contains(run.get("phase").asString());
    return over || run.get("currentStep").asInt() + 2 >= run.get("steps").size();
  }

  private String address() {
    return "/api/runs/" + run + "/events";
  }

  private JsonNode look(RealServer server) throws IOException, InterruptedException {
    return JSON.readTree(server.get("/api/runs/" + run));
  }

  private static void tank(RealServer server) throws IOException, InterruptedException {
    String room = "{\"format\":\"135\",\"most\":2,\"eachMl\":300}";
    made(
        server.post(
            "/api/tanks", "{\"name\":\"Double\",\"rooms\":[" + room + "],\"holdsMl\":650}"));
  }

  /** A new roll, loaded and begun; whatever was answered of the runs before is left behind. */
  private JsonNode anotherRun(RealServer server) throws IOException, InterruptedException {
    run++;
    answered.clear();
    made(
        server.post(
            "/api/rolls",
            "{\"number\":\"A-"
                + run
                + "\",\"format\":\"135\",\"frames\":36,\"film\":\"TRI-X 400\",\"ei\":400}"));
    made(
        server.post(
            "/api/loads",
            "{\"rolls\":[\"A-"
                + run
                + "\"],\"tank\":\"Double\",\"developer\":\"D-76\",\"temp\":\"20C\"}"));
    made(server.post("/api/runs", "{\"load\":" + run + "}"));
    return sent(server, events.event("started", 0, ""), look(server));
  }

  private static void made(HttpResponse<String> answer) {
    assertThat(answer.statusCode()).as(answer.body()).isBetween(200, 299);
  }
}
