package org.wetside.web.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.shelf.JudgeBottles;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.Happening;
import org.wetside.core.run.MishapAdvice;
import org.wetside.core.shelf.BathTest;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.Verdict;
import org.wetside.store.Database;
import org.wetside.web.OpenServer;

/** What a mishap at the Bench writes into the books of bottles, and who answers it. */
class MishapBooksTest {
  private static final String WRONG = "do not use: wrong bottle, decide";

  @TempDir Path home;
  private OpenServer server;

  @BeforeEach
  void open() {
    StoredLoad.in(home);
    server = new OpenServer(home, Clock.systemUTC());
    bottle("D", "soup", BottleRole.STOCK, BathKind.DEVELOPER);
    bottle("S", "vinegar", BottleRole.WORKING, BathKind.STOP_BATH);
    bottle("F", "fix", BottleRole.WORKING, BathKind.FIXER);
    assertThat(server.postJson("/api/runs", "{\"load\":1}").statusCode()).isEqualTo(201);
    send("first-pour", "started", ",\"confirmed\":true");
  }

  @AfterEach
  void close() {
    server.close();
  }

  @Test
  void theWrongBottleAndTheBathsOwnAreNotUsedUntilDecidedOnTheirPages() {
    tell("wrong-bottle-1", MishapAdvice.WRONG_BOTTLE, "");
    assertThat(verdict("D")).isEqualTo(WRONG);
    assertThat(verdict("F")).isNotEqualTo(WRONG);
    tell("wrong-bottle-2", MishapAdvice.WRONG_BOTTLE, ",\"about\":\"f\"");
    assertThat(verdict("F")).isEqualTo(WRONG);
    assertThat(bottle("D").state().marks()).as("marked once").hasSize(1);
    assertThat(server.get("/api/runs/1/record").body())
        .contains("poured into the wrong bottle: bottle F");

    assertThat(server.get("/shelf/F").body())
        .contains("Do not use: wrong bottle, decide (run 1).")
        .contains("fixer in developer: discard the developer")
        .contains("action=\"/shelf/F/decide\"");
    HttpResponse<String> wordless = server.postForm("/shelf/F/decide", "decided=");
    assertThat(wordless.statusCode()).isEqualTo(422);
    assertThat(wordless.body()).contains("reason of the decision");
    assertThat(server.postForm("/shelf/F/decide", "decided=two+drops").statusCode()).isEqualTo(303);
    assertThat(bottle("F").state().marks()).isEmpty();
    assertThat(server.get("/shelf/F").body())
        .contains("do not use lifted")
        .contains("two drops")
        .doesNotContain("/decide");
    assertThat(verdict("D")).as("the other one is still to be decided").isEqualTo(WRONG);
  }

  @Test
  void takingTheMishapBackLiftsItsMarks() {
    tell("wrong-bottle-1", MishapAdvice.WRONG_BOTTLE, "");
    tell("wrong-bottle-2", MishapAdvice.WRONG_BOTTLE, ",\"about\":\"F\"");
    send("undo-the-second", "undone", ",\"undoes\":\"wrong-bottle-2\"");
    assertThat(bottle("F").state().marks()).isEmpty();
    assertThat(verdict("D")).isEqualTo(WRONG);
    send("undo-the-first", "undone", ",\"undoes\":\"wrong-bottle-1\"");
    assertThat(bottle("D").state().marks()).isEmpty();
  }

  @Test
  void aForgottenRinseAsksForATestOfTheNextBathEvenAfterAPassedOne() {
    server.wetside().changeBottle().tested("F", BathTest.CLIP, true, "this morning");
    send("no-rinse-1", "mishap", ",\"step\":1,\"what\":\"rinse forgotten\"");
    assertThat(verdict("F")).isEqualTo("test first: no rinse before the fixer");
    server.close();
    server = new OpenServer(home, Clock.systemUTC());
    assertThat(verdict("F")).isEqualTo("test first: no rinse before the fixer");
    server.wetside().changeBottle().tested("F", BathTest.CLIP, true, "after it");
    assertThat(judged("F").kind()).isEqualTo(Verdict.Kind.USE);
  }

  @Test
  void theNextRunIsWarnedBeforeItsFirstPour() {
    tell("wrong-bottle-1", MishapAdvice.WRONG_BOTTLE, ",\"about\":\"F\"");
    send("give-it-up", "abandoned", ",\"reason\":\"film is lost\"");
    server.close();
    long load = StoredLoad.another(home);
    server = new OpenServer(home, Clock.systemUTC());
    assertThat(server.postJson("/api/runs", "{\"load\":" + load + "}").body())
        .contains("do not use: wrong bottle, decide");
  }

  @Test
  void aBookThatCannotBeWrittenKeepsTheMishapOut() {
    try (Database other = Database.open(home.resolve("wetside.db"))) {
      other.change(
          session ->
              session.change(
                  "CREATE TRIGGER full BEFORE INSERT ON bottle_line"
                      + " BEGIN SELECT RAISE(ABORT, 'no room'); END"));
      assertThat(post("wrong-bottle-1", "mishap", mishap(MishapAdvice.WRONG_BOTTLE)).statusCode())
          .isEqualTo(500);
      assertThat(mishaps()).isEmpty();
      other.change(session -> session.change("DROP TRIGGER full"));
    }
    tell("wrong-bottle-1", MishapAdvice.WRONG_BOTTLE, "");
    assertThat(mishaps()).hasSize(1);
    assertThat(verdict("D")).isEqualTo(WRONG);
  }

  @Test
  void aLetterIsALetter() {
    HttpResponse<String> odd =
        post("odd-letter", "mishap", mishap(MishapAdvice.WRONG_BOTTLE) + ",\"about\":\"the left\"");
    assertThat(odd.statusCode()).isEqualTo(422);
    assertThat(odd.body()).contains("the letter of the other bottle");
  }

  private void bottle(String letter, String contents, BottleRole role, BathKind bath) {
    server
        .wetside()
        .addBottle()
        .add(BottleLabel.of(letter, contents, role, bath, Volume.ofLitres(1)), Volume.ofLitres(1));
  }

  private Bottle bottle(String letter) {
    return server.wetside().listBottles().find(letter).orElseThrow();
  }

  private Verdict judged(String letter) {
    return JudgeBottles.verdict(bottle(letter), server.wetside().clock());
  }

  private String verdict(String letter) {
    return judged(letter).kind().word() + ": " + judged(letter).first().words();
  }

  private static String mishap(String what) {
    return ",\"step\":0,\"what\":\"" + what + "\"";
  }

  private void tell(String id, String what, String more) {
    send(id, "mishap", mishap(what) + more);
  }

  private void send(String id, String kind, String more) {
    HttpResponse<String> answer = post(id, kind, more);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
  }

  private HttpResponse<String> post(String id, String kind, String more) {
    return server.postJson(
        "/api/runs/1/events",
        "{\"id\":\"%s\",\"kind\":\"%s\",\"occurredAt\":\"%s\",\"screen\":\"laptop\"%s}"
            .formatted(id, kind, Instant.now(), more));
  }

  private List<Happening> mishaps() {
    return server.wetside().bench().look(1).state().applied().stream()
        .map(event -> event.what())
        .filter(Happening.Mishap.class::isInstance)
        .toList();
  }
}
