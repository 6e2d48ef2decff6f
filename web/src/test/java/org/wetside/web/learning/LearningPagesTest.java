package org.wetside.web.learning;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.demo.FillDemo;
import org.wetside.app.home.Home;
import org.wetside.web.OpenServer;
import org.wetside.web.WebOptions;

/** Judging and learning by HTTP, on the rolls of the invented evenings. */
class LearningPagesTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-01-14T20:14:00Z"), ZoneOffset.UTC);
  private static final String TIME =
      "/api/time?film=TRI-X+400&developer=D-76&dilution=1%2B1&ei=400&temp=20C";

  private OpenServer server;

  @BeforeEach
  void open(@TempDir Path home) {
    server = new OpenServer(FillDemo.into(new Home(home), CLOCK), WebOptions.onPort(0));
    for (String judged : new String[] {"TM-01", "TM-02"}) {
      assertThat(send("DELETE", "/api/rolls/" + judged + "/judgement", "").statusCode())
          .isEqualTo(200);
    }
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

  private void judge(String roll, String contrast) {
    HttpResponse<String> answer =
        server.postForm(
            "/negatives/" + roll + "/judge",
            "edge=as+usual&shadows=good&contrast=" + contrast + "&water=tap");
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
  }

  @Test
  void aRollIsJudgedOnItsPageAndUsedOnceAccepted() {
    assertThat(server.get("/curves/learning").body()).contains("<b>Nothing is learned yet.</b>");
    assertThat(server.get("/negatives/TM-01").body())
        .contains("Judge the negatives", "edge print, first", "a little flat", "glass rod");
    assertThat(server.get(TIME).body()).contains("\"yours\":null");

    judge("TM-01", "flat");
    judge("TM-02", "flat");

    assertThat(server.get("/negatives/TM-01").body())
        .contains("It alone says +1", "from the word flat", "Judge it anew");
    assertThat(server.get("/curves/learning").body())
        .contains(
            "it is <b>not in use</b> yet", "TRI-X 400 in D-76", "from two rolls", "<svg", "<title")
        .contains("The chart in figures");
    String offered = server.get(TIME).body();
    assertThat(offered).contains("from 2 rolls; use it?").doesNotContain("your own factor");

    assertThat(server.postForm("/curves/learning/use", "film=400TX&developer=D-76").statusCode())
        .isEqualTo(303);
    String used = server.get(TIME).body();
    assertThat(used)
        .contains("\"step\":\"your own factor\"", "yours, in use: +", "\"standing\":\"computed\"");
    assertThat(server.get(TIME.replace("/api/time", "/times")).body())
        .contains("your judged rolls", "at your bench within", "Yours, in use")
        .contains("by your own factor on what is printed");
    assertThat(server.get("/curves/learning").body())
        .contains("in use; nothing drifts", "Use the printed time again");

    assertThat(server.postForm("/curves/learning/back", "film=400TX&developer=D-76").statusCode())
        .isEqualTo(303);
    assertThat(server.get(TIME).body()).isEqualTo(offered);
    assertThat(server.postForm("/negatives/TM-02/judge/back", "").statusCode()).isEqualTo(303);
    assertThat(server.get(TIME).body()).contains("from 1 roll; use it?");
  }

  @Test
  void anIndexIsUsedOnceAcceptedApartFromTheFactor() {
    for (String roll : new String[] {"TM-01", "TM-02"}) {
      assertThat(
              server
                  .postForm("/negatives/" + roll + "/judge", "edge=as+usual&shadows=weak")
                  .statusCode())
          .isEqualTo(303);
    }
    assertThat(server.get("/curves/learning").body())
        .contains("none of your own", "Use EI ", "by words, whose worth is a judgement")
        .contains("shadows −1, −½, 0, +½ stop");
    assertThat(server.get(TIME).body()).contains("\"yourIndex\":\"your index: ");

    assertThat(
            server.postForm("/curves/learning/index/use", "film=400TX&developer=D-76").statusCode())
        .isEqualTo(303);
    assertThat(server.get("/curves/learning").body()).contains("Use no index of my own");
    assertThat(server.get(TIME).body())
        .contains("your index, in use: ", "stops less light than you need")
        .doesNotContain("your own factor");
    assertThat(server.get("/drawer").body()).contains("yours, in use: ", " for 400TX in D-76");

    HttpResponse<String> back =
        send("DELETE", "/api/learned/index-in-use?film=TRI-X+400&developer=D-76", "");
    assertThat(back.body()).contains("\"indexInUse\":null");
    assertThat(
            server
                .postJson(
                    "/api/learned/index-in-use", "{\"film\":\"TRI-X 400\",\"developer\":\"D-76\"}")
                .body())
        .contains("\"indexInUse\":{\"ei\":");
  }

  @Test
  void aChangeOfWaterIsMarkedInTheChart() {
    judge("TM-01", "flat");
    assertThat(
            server
                .postForm("/negatives/TM-02/judge", "edge=as+usual&contrast=flat&water=well")
                .statusCode())
        .isEqualTo(303);
    assertThat(server.get("/curves/learning").body())
        .contains("changed before it", "water: well", "class=\"changed\"");
  }

  @Test
  void aRefusedFormKeepsWhatWasTyped() {
    HttpResponse<String> comma =
        server.postForm(
            "/negatives/TM-03/judge", "base-fog=0%2C28&shadow-density=0.36&light-density=1.x");
    assertThat(comma.statusCode()).isEqualTo(422);
    assertThat(comma.body())
        .contains("write it with a point, for example 0.28", "value=\"0,28\"")
        .contains("write a density, for example 0.32", "value=\"0.36\"");
    HttpResponse<String> turned =
        server.postForm("/negatives/TM-03/judge", "shadow-density=1.4&light-density=0.3");
    assertThat(turned.statusCode()).isEqualTo(422);
    assertThat(turned.body()).contains("are they exchanged?", "value=\"1.4\"");
    HttpResponse<String> nothing = server.postForm("/negatives/TM-03/judge", "edge=as+usual");
    assertThat(nothing.statusCode()).isEqualTo(422);
    assertThat(nothing.body()).contains("say how shadows or contrast look");
    HttpResponse<String> early = server.postForm("/negatives/TM-07/judge", "contrast=flat");
    assertThat(early.statusCode()).isEqualTo(422);
    assertThat(early.body()).contains("no negatives to judge yet");
    assertThat(server.get("/negatives/XX-9/judge").statusCode()).isEqualTo(404);
  }

  @Test
  void theInterfaceSaysTheSame() {
    HttpResponse<String> pair =
        send(
            "PUT",
            "/api/rolls/TM-03/judgement",
            "{\"baseFogDensity\":0.28,\"shadowDensity\":0.36,\"lightDensity\":1.4}");
    assertThat(pair.statusCode()).as(pair.body()).isEqualTo(200);
    assertThat(pair.body())
        .contains("\"factor\":", "reference pair", "\"indexStops\":-0.", "\"makersSeconds\":");
    assertThat(server.get("/api/learned").body())
        .contains("\"filmCode\":\"100TMX\"", "\"sigmas\":", "\"flagged\":false");
    HttpResponse<String> used =
        server.postJson("/api/learned/in-use", "{\"film\":\"T-MAX 100\",\"developer\":\"D-76\"}");
    assertThat(used.body()).contains("\"inUse\":{\"factor\":");
    HttpResponse<String> back =
        send("DELETE", "/api/learned/in-use?film=T-MAX+100&developer=D-76", "");
    assertThat(back.body()).contains("\"inUse\":null");
    assertThat(send("DELETE", "/api/rolls/TM-03/judgement", "").body())
        .contains("\"roll\":\"TM-03\"");
    assertThat(send("DELETE", "/api/rolls/TM-03/judgement", "").statusCode()).isEqualTo(409);
    assertThat(send("PUT", "/api/rolls/TM-03/judgement", "{\"contrast\":\"mushy\"}").body())
        .contains("mushy", "a little flat");
    assertThat(send("PUT", "/api/rolls/TM-03/judgement", "{\"lightDensity\":1.2}").body())
        .contains("the pair needs both");
    assertThat(server.postJson("/api/learned/in-use", "{\"film\":\"T-MAX 100\"}").body())
        .contains("developer");
  }
}
