package org.wetside.web.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetside.core.run.Happening;
import org.wetside.core.run.MishapAdvice;
import org.wetside.core.run.Phase;
import org.wetside.core.run.RunState;
import org.wetside.reference.Mishaps;
import org.wetside.web.OpenServer;

/** What a mishap told over the interface leaves behind, and what it may and may not move. */
class MishapRoutesTest {
  @TempDir Path home;
  private OpenServer server;

  static Stream<MishapAdvice> all() {
    return Mishaps.all().stream();
  }

  @BeforeEach
  void open() {
    StoredLoad.in(home);
    server = new OpenServer(home, Clock.systemUTC());
    assertThat(server.postJson("/api/runs", "{\"load\":1}").statusCode()).isEqualTo(201);
  }

  @AfterEach
  void close() {
    server.close();
  }

  /** The developer runs on whatever is told: only a new time that was accepted moves its end. */
  @ParameterizedTest
  @MethodSource("all")
  void isKeptWithItsAdviceAcrossARestartAndMovesNothing(MishapAdvice mishap) {
    start();
    Instant before = drain();
    HttpResponse<String> answer = tell("mishap-1", mishap.what(), "");
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    assertThat(drain()).isEqualTo(before);
    server.close();
    server = new OpenServer(home, Clock.systemUTC());
    assertThat(mishaps())
        .containsExactly(
            new Happening.Mishap(mishap.what(), mishap.firstMinute(), Optional.empty()));
    assertThat(state().phase()).isEqualTo(Phase.RUNNING);
    assertThat(server.get("/api/runs/1/record").body()).contains(mishap.what());
  }

  @Test
  void aNewTimeThatWasAcceptedMovesTheDeveloper() {
    start();
    Instant before = drain();
    HttpResponse<String> answer =
        tell("mishap-2", "wrong dilution noticed in the developer", ",\"newSeconds\":660");
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    assertThat(drain()).isEqualTo(before.plus(Duration.ofMinutes(2)));
  }

  @Test
  void aNewTimeIsRefusedForAnyOtherBath() {
    start();
    HttpResponse<String> answer =
        tell("mishap-3", "overtime in the developer", ",\"newSeconds\":60", 1);
    assertThat(answer.statusCode()).isEqualTo(409);
    assertThat(answer.body()).contains("a new time is for a developer");
    assertThat(mishaps()).isEmpty();
  }

  @Test
  void ownWordsAreKeptWithoutAdvice() {
    start();
    assertThat(tell("mishap-4", "dropped the tank", "").statusCode()).isEqualTo(200);
    assertThat(mishaps())
        .containsExactly(new Happening.Mishap("dropped the tank", "", Optional.empty()));
  }

  @Test
  void beforeTheFirstPourItIsRefusedWithTheStateNamed() {
    HttpResponse<String> early = tell("mishap-5", "tank leaks", "");
    assertThat(early.statusCode()).isEqualTo(409);
    assertThat(early.body()).contains("the run is ready");
  }

  private void start() {
    assertThat(send("first-pour", "started", ",\"confirmed\":true").statusCode()).isEqualTo(200);
  }

  private HttpResponse<String> tell(String id, String what, String more) {
    return tell(id, what, more, 0);
  }

  private HttpResponse<String> tell(String id, String what, String more, int step) {
    return send(id, "mishap", ",\"step\":" + step + ",\"what\":\"" + what + "\"" + more);
  }

  private HttpResponse<String> send(String id, String kind, String more) {
    return server.postJson(
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

  private RunState state() {
    return server.wetside().bench().look(1).state();
  }

  private Instant drain() {
    return server.wetside().bench().look(1).moments().steps().get(0).drain();
  }

  private List<Happening.Mishap> mishaps() {
    return state().applied().stream()
        .map(event -> event.what())
        .filter(Happening.Mishap.class::isInstance)
        .map(Happening.Mishap.class::cast)
        .toList();
  }
}
