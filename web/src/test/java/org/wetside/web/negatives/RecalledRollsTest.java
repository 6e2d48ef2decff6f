package org.wetside.web.negatives;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.trial.ClipWish;
import org.wetside.core.trial.Sighting;
import org.wetside.core.trial.TrialKind;
import org.wetside.web.OpenServer;
import org.wetside.web.bench.StoredLoad;

/**
 * From a run that the conductor led to its end, over a fixer that fails afterwards, to rolls that
 * are fixed again: the books of a real home, asked over HTTP.
 */
class RecalledRollsTest {
  private final MovedClock clock = new MovedClock(Instant.parse("2026-01-14T19:00:00Z"));
  private OpenServer server;

  @BeforeEach
  void open(@TempDir Path home) {
    StoredLoad.in(home);
    server = new OpenServer(home, clock);
    fixer("F");
    clip("F", 45, true);
    clock.pass(Duration.ofMinutes(1));
    assertThat(server.postJson("/api/runs", "{\"load\":1}").statusCode()).isEqualTo(201);
    assertThat(
            server
                .postJson(
                    "/api/runs/1/events",
                    "{\"id\":\"first-pour\",\"kind\":\"started\",\"confirmed\":true,\"screen\":"
                        + "\"laptop\",\"occurredAt\":\""
                        + clock.instant()
                        + "\"}")
                .statusCode())
        .isEqualTo(200);
    clock.pass(Duration.ofHours(2));
    assertThat(server.get("/api/runs/1").body()).contains("\"phase\":\"finished\"");
    server.postForm("/negatives/A-1/file", "sleeve=folder+3,+page+12");
    assertThat(patch("/api/rolls/A-1", "{\"owner\":\"Anna\"}").statusCode()).isEqualTo(200);
  }

  @AfterEach
  void close() {
    server.close();
  }

  @Test
  void whatAFixerFixedSinceItsLastPassedTestIsRecalledUntilItIsFixedAgain() {
    assertThat(server.get("/shelf/recall").body()).contains("No roll is to be fixed <b>again</b>");
    clock.pass(Duration.ofMinutes(5));
    clip("F", 95, false);

    assertThat(server.get("/shelf/recall").body())
        .contains("<b>Two rolls</b> to be fixed again")
        .contains("<b>A-1</b> some film at 400, sleeve folder 3, page 12, of Anna. Fixed in F")
        .contains("<b>A-2</b> some film at 400. Fixed in F");
    assertThat(server.get("/api/recall").body())
        .contains("\"roll\":\"A-1\"", "\"sleeve\":\"folder 3, page 12\"", "\"owner\":\"Anna\"")
        .contains("\"run\":\"1\"");

    assertThat(server.get("/shelf/recall").body()).contains("class=\"caution\"");
    assertThat(server.postForm("/shelf/recall", "roll=A-1&in=F&note=twice+as+long").body())
        .as("not in the one that failed")
        .contains("it does not fix, or failed its test")
        .contains("name=\"in\" value=\"F\"", "name=\"note\" value=\"twice as long\"")
        .contains("name=\"note\" value=\"\"");
    fixer("G");
    assertThat(server.postForm("/shelf/recall", "roll=A-1&in=G&note=").statusCode()).isEqualTo(303);
    assertThat(server.get("/shelf/recall").body())
        .contains("<b>One roll</b> to be fixed again", "<b>A-2</b>")
        .doesNotContain("<b>A-1</b>");
    assertThat(server.postForm("/shelf/recall", "roll=A-2&in=&note=").statusCode()).isEqualTo(303);
    assertThat(server.get("/shelf/recall").body()).contains("No roll is to be fixed");
  }

  /** A pass between vouches for what was fixed before it: nothing is recalled. */
  @Test
  void aPassedTestAfterTheRunKeepsItsRollsOffTheList() {
    clip("F", 50, false);
    clock.pass(Duration.ofMinutes(5));
    clip("F", 95, false);
    assertThat(server.get("/shelf/recall").body()).contains("No roll is to be fixed");
  }

  @Test
  void thePageOfARollSaysWhatTestsOfItsFixerAndItsWashingMean() {
    assertThat(server.get("/negatives/A-1").body())
        .as("a test from before it was fixed says nothing of it")
        .contains("Its washing was not tested", "/bench/test/film?rolls=A-1", "<dd>Anna</dd>")
        .doesNotContain("Clearing time");
    server
        .wetside()
        .bathTests()
        .judgeTest()
        .made("F", TrialKind.IODIDE, Optional.empty(), Duration.ofMinutes(1), Sighting.BAD, "");
    clock.pass(Duration.ofDays(1));
    server.wetside().bathTests().judgeTest().madeOfFilm(List.of("A-1"), Sighting.GOOD, "");

    assertThat(server.get("/negatives/A-1").body())
        .contains("Iodide test, 14 January", "bottle F is exhausted")
        .contains("The fixer this roll was fixed in was spent")
        .contains("Residual thiosulfate, 15 January")
        .contains("It is washed, as far as this test can tell.");
    assertThat(server.get("/negatives/A-2").body())
        .contains("Iodide test")
        .doesNotContain("Residual thiosulfate,");
    assertThat(server.get("/drawer/A-1").body()).contains("No stain on A-1");
    assertThat(server.get("/api/rolls/A-1").body())
        .contains("\"tests\":[{\"test\":", "\"kind\":\"residue\"", "\"outcome\":\"passed\"");
  }

  @Test
  void aStainMeansWashItAgain() {
    server.wetside().bathTests().judgeTest().madeOfFilm(List.of("A-1"), Sighting.BAD, "");
    assertThat(server.get("/negatives/A-1").body())
        .contains("The drop left a stain", "wash it again");
  }

  private void fixer(String letter) {
    Volume litre = Volume.ofLitres(1);
    server
        .wetside()
        .addBottle()
        .add(
            BottleLabel.of(letter, "some fixer", BottleRole.WORKING, BathKind.FIXER, litre), litre);
  }

  private void clip(String letter, int seconds, boolean fresh) {
    server
        .wetside()
        .bathTests()
        .judgeTest()
        .made(
            letter,
            TrialKind.CLEARING,
            Optional.of(new ClipWish("some film", "1+4", Temperature.ofCelsius(20), fresh)),
            Duration.ofSeconds(seconds),
            Sighting.GOOD,
            "");
  }

  private HttpResponse<String> patch(String path, String body) {
    return server.send(
        HttpRequest.newBuilder(server.at(path))
            .header("Content-Type", "application/json")
            .method("PATCH", HttpRequest.BodyPublishers.ofString(body))
            .build());
  }
}
