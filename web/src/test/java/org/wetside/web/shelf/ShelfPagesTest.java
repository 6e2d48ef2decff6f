package org.wetside.web.shelf;

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
import org.wetside.web.OpenServer;

/** Bottles on their pages and over HTTP. Every bottle is invented. */
class ShelfPagesTest {
  private static final String STOCK =
      "letter=D&contents=D-76&role=stock&bath=developer&full=1000&left=800&use=once"
          + "&mixedOn=2026-01-10&openedOn=&note=";

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

  private void put() {
    assertThat(server.postForm("/shelf/new", STOCK).statusCode()).isEqualTo(303);
  }

  private HttpResponse<String> act(String act, String fields) {
    return server.postForm("/shelf/D/" + act, fields);
  }

  private double left() {
    return server.wetside().listBottles().find("D").orElseThrow().left().millilitres();
  }

  @Test
  void aBottleIsPutUpAndStandsThere() {
    put();

    assertThat(server.get("/shelf").body())
        .contains("One bottle stands here", "D-76, stock", "Mixed 4 days ago", "800 of 1000 mL");
    assertThat(server.get("/shelf/D").body()).contains("Bottle <b>D</b> holds 800 mL of D-76");
  }

  @Test
  void aBottleThatCannotBeIsShownAgainAsTyped() {
    HttpResponse<String> refused =
        server.postForm("/shelf/new", STOCK.replace("left=800", "left=1200"));

    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("1200", "1000 mL", "value=\"D-76\"");
    assertThat(server.wetside().listBottles().all()).isEmpty();
  }

  @Test
  void theSameLetterTwiceIsRefused() {
    put();
    assertThat(server.postForm("/shelf/new", STOCK).statusCode()).isEqualTo(422);
    assertThat(server.wetside().listBottles().all()).hasSize(1);
  }

  @Test
  void everyActIsALineOfTheBook() {
    put();
    assertThat(act("take", "take=300&takeNote=for+two+rolls").statusCode()).isEqualTo(303);
    assertThat(left()).isEqualTo(500);
    act("top-up", "topUp=100&topUpNote=");
    act("correct", "correct=580&correctReason=spilled");
    act("open", "openedOn=2026-01-14");

    assertThat(left()).isEqualTo(580);
    assertThat(server.get("/shelf/D").body())
        .contains("−300 mL", "for two rolls", "+100 mL", "−20 mL", "spilled");

    assertThat(act("discard", "discardNote=brown").statusCode()).isEqualTo(303);
    assertThat(server.wetside().listBottles().find("D")).isEmpty();
    assertThat(server.get("/shelf/D").body()).contains("discarded on 14 January 2026");
    HttpResponse<String> late = act("take", "take=10&takeNote=late");
    assertThat(late.statusCode()).isEqualTo(422);
    assertThat(late.body()).contains("it was discarded on 2026-01-14", "value=\"late\"");
    assertThat(server.get("/shelf/Z").statusCode()).isEqualTo(404);
  }

  @Test
  void noMoreIsTakenThanThereIs() {
    put();

    HttpResponse<String> refused = act("take", "take=900&takeNote=too+much");

    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("value=\"900\"", "value=\"too much\"", "800 mL");
    assertThat(left()).isEqualTo(800);
  }

  @Test
  void handlingABottleShowsItsCautionsWithTheirSource() {
    put();

    assertThat(server.get("/shelf/D").body()).containsPattern("class=\"caution\">[^<]+");
  }

  @Test
  void aMinimumFromTheLeafletClosesTheOpenCheck() {
    server.postForm(
        "/shelf/new", STOCK.replace("D-76", "Millrace").replace("letter=D", "letter=M"));
    String asked = "/shelf/mix?dilution=1%2B3&total=600&bottle=M&rolls=2";
    assertThat(server.get(asked).body()).contains("minimum not on file");

    server.postForm("/shelf/minimum", "developer=Millrace&perRoll=70&source=an+invented+leaflet");

    assertThat(server.get(asked).body()).contains("enough stock: 150 mL for a need of 140 mL");
  }

  @Test
  void theSameOverHttp() {
    String body =
        "{\"letter\":\"F\",\"contents\":\"fixer\",\"role\":\"working\",\"bath\":\"fixer\",\"fullMl\":1000}";
    assertThat(server.postJson("/api/bottles", body).statusCode()).isEqualTo(201);
    HttpResponse<String> taken =
        server.postJson("/api/bottles/F/book", "{\"takeMl\":30,\"note\":\"spilled\"}");
    assertThat(taken.body()).contains("\"leftMl\":970.0");
    assertThat(server.postJson("/api/bottles/F/book", "{\"test\":\"clip\",\"passed\":true}").body())
        .contains("\"what\":\"clip test passed\"", "\"leftMl\":970.0");
    assertThat(server.postJson("/api/bottles/F/book", "{\"test\":\"clip\"}").body())
        .contains("say passed: true or false");
    server.postForm("/shelf/F/failed", "test=clip+test&testNote=slow");
    assertThat(server.get("/shelf/F").body()).contains("clip test failed", "slow");
    HttpResponse<String> nothing = server.postJson("/api/bottles/F/book", "{}");
    assertThat(nothing.statusCode()).isEqualTo(400);
    assertThat(nothing.body())
        .contains("takeMl, topUpMl, pourBackMl, correctToMl, openedOn or test");
    HttpResponse<String> gone =
        server.send(HttpRequest.newBuilder(server.at("/api/bottles/F")).DELETE().build());
    assertThat(gone.statusCode()).isEqualTo(200);
    assertThat(gone.body())
        .contains("\"leftMl\":970.0", "\"what\":\"taken out\"", "spilled", "\"disposal\":[{");
    assertThat(server.get("/api/bottles/F").body()).contains("\"discarded\":true");
    assertThat(server.postJson("/api/bottles/F/book", "{\"takeMl\":1}").body())
        .contains("it was discarded on 2026-01-14");
    assertThat(server.get("/api/bottles/Q").statusCode()).isEqualTo(404);
  }
}
