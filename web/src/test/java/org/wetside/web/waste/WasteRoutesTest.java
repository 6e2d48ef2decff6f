package org.wetside.web.waste;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.web.OpenServer;

/** Jugs and bottles here are invented. */
class WasteRoutesTest {
  private OpenServer server;

  @BeforeEach
  void open(@TempDir Path home) {
    server =
        new OpenServer(home, Clock.fixed(Instant.parse("2026-01-14T19:00:00Z"), ZoneOffset.UTC));
    server.postForm("/shelf/waste/new", "name=W1&kind=silver-bearing&holds=5000");
    server.postForm("/shelf/waste/new", "name=W+2&kind=other&holds=5000");
  }

  @AfterEach
  void close() {
    server.close();
  }

  private HttpResponse<String> pour(String jug, String contents, String bath, int volume) {
    return server.postForm(
        "/shelf/waste/pour",
        "jug=%s&bottle=&contents=%s&bath=%s&volume=%d&note="
            .formatted(jug, contents.replace(' ', '+'), bath.replace(' ', '+'), volume));
  }

  @Test
  void aRefusedPouringNamesBothThingsTheReasonAndTheSourceAndLosesNothingTyped() {
    pour("W 2", "F-24", "fixer", 400);
    HttpResponse<String> refused = pour("W 2", "household bleach", "", 250);

    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("F-24", "household bleach", "chlorine", "CH-S14", "value=\"250\"");
    assertThat(server.wetside().wasteBook().keepJugs().of("W 2").inside()).hasSize(1);
  }

  @Test
  void aBottleGoesIntoAJugAndOffTheShelf() {
    server.postJson(
        "/api/bottles",
        "{\"letter\":\"F\",\"contents\":\"F-24\",\"role\":\"working\",\"bath\":\"fixer\",\"fullMl\":1000}");
    assertThat(server.get("/shelf/F").body()).contains("/shelf/waste?bottle=F");
    server.postForm(
        "/shelf/waste/pour", "jug=W1&bottle=F&contents=&bath=&volume=&note=past+its+time");

    assertThat(server.get("/api/bottles/F").body()).contains("\"discarded\":true");
    assertThat(server.get("/api/waste/W1").body())
        .contains(
            "\"filledMl\":1000.0",
            "\"leastGrams\":3.0",
            "\"mostGrams\":6.0",
            "low confidence",
            "CH-S56",
            "Follow your local waste authority");
    assertThat(server.get("/shelf/waste").body()).contains("3.0 to 6.0 g", "rough", "CH-S56");
  }

  @Test
  void handingInEmptiesAndRefusesADayToCome() {
    pour("W1", "F-24", "fixer", 900);
    HttpResponse<String> refused =
        server.postForm("/shelf/waste/W1/hand-in", "on=2026-01-20&to=the+quay&handInNote=");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("2026-01-20", "not after today", "value=\"the quay\"");

    server.postForm("/shelf/waste/W1/hand-in", "on=2026-01-14&to=the+quay&handInNote=");
    assertThat(server.get("/api/waste/W1").body())
        .contains("\"filledMl\":0.0", "\"to\":\"the quay\"", "\"volumeMl\":900.0");
  }

  @Test
  void aPouringIsTakenBackOnItsPageWithAReason() {
    pour("W1", "F-24", "fixer", 900);
    assertThat(server.postForm("/shelf/waste/W1/take-back", "line=1&reason=").statusCode())
        .isEqualTo(422);
    server.postForm("/shelf/waste/W1/take-back", "line=1&reason=typed+twice");
    assertThat(server.get("/api/waste/W1").body()).contains("\"inside\":[]");
  }

  @Test
  void overHttpBadInputIsRefusedWithThingValueAndLimit() {
    String at = "/api/waste/W1/poured";
    assertThat(server.postJson(at, "{\"contents\":\"F-24\",\"bath\":\"fixer\"}").body())
        .contains("volume poured in");
    assertThat(server.postJson(at, "{\"bottle\":\"Q\"}").body()).contains("bottle", "\\\"Q\\\"");
    assertThat(
            server
                .postJson("/api/waste", "{\"jug\":\"W1\",\"kind\":\"stop\",\"holdsMl\":1000}")
                .body())
        .contains("there is a jug of that name");
    assertThat(
            server
                .postJson("/api/waste", "{\"jug\":\"W3\",\"kind\":\"oil\",\"holdsMl\":1000}")
                .body())
        .contains("silver-bearing, developer, stop or other");
    assertThat(server.get("/api/waste/W9").statusCode()).isEqualTo(404);
  }

  @Test
  void theLabelAndTheSheetSayWhatIsInItWhatMustNotMeetItAndWhoseRulesCount() throws IOException {
    pour("W1", "F-24", "fixer", 900);
    String label = printed("/shelf/waste/W1/label.pdf");
    assertThat(label).contains("W1", "silver-bearing", "chloramine", "CH-S58", "local waste");
    String sheet = printed("/shelf/waste/W1/sheet.pdf?paper=letter");
    assertThat(sheet)
        .contains("900 mL", "F-24", "sodium thiosulfate", "CH-S56", "received by", "local waste");
    assertThat(server.get("/shelf/waste/W1/sheet.txt").body())
        .contains("900 mL", "roughly 2.7 to 5.4 g", "never together", "handed in on");
    assertThat(server.get("/shelf/waste/W1/label.txt").body()).contains("WASTE, JUG W1");
  }

  private String printed(String path) throws IOException {
    try (InputStream pdf = server.at(path).toURL().openStream();
        PDDocument document = Loader.loadPDF(pdf.readAllBytes())) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }
}
