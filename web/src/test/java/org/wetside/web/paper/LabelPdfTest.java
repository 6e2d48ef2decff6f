package org.wetside.web.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.zxing.ReaderException;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.web.OpenServer;
import org.wetside.web.page.Known;

/** Bottle labels as they leave a real server, read back. Owners and batches are invented. */
class LabelPdfTest {
  private static final double TOLERANCE_MM = 0.2;

  /** One label on a sheet. */
  private static final double WIDE_MM = 93;

  private static final double TALL_MM = 63.5;

  private @TempDir Path home;
  private OpenServer server;

  @BeforeEach
  void open() {
    server =
        new OpenServer(home, Clock.fixed(Instant.parse("2026-01-15T19:52:00Z"), ZoneOffset.UTC));
    add(
        BottleLabel.of("D", "D-76", BottleRole.STOCK, BathKind.DEVELOPER, Volume.ofLitres(1))
            .withDays(Optional.of(LocalDate.parse("2026-01-10")), Optional.empty())
            .withBatch("7")
            .withOwner("the kitchen"));
    add(
        BottleLabel.of("F2", "fixer", BottleRole.WORKING, BathKind.FIXER, Volume.ofMillilitres(500))
            .withDilution("1+4"));
    for (int i = 1; i <= 7; i++) {
      add(
          BottleLabel.of(
              "W" + i, "wash aid", BottleRole.WORKING, BathKind.WASH_AID, Volume.ofLitres(1)));
    }
  }

  @AfterEach
  void close() {
    server.close();
  }

  private void add(BottleLabel label) {
    server.wetside().addBottle().add(label, label.full());
  }

  private Printed printed(String path) throws IOException, InterruptedException {
    HttpResponse<byte[]> answer =
        HttpClient.newHttpClient()
            .send(
                HttpRequest.newBuilder(server.at(path)).build(),
                HttpResponse.BodyHandlers.ofByteArray());
    assertThat(answer.statusCode()).as(path).isEqualTo(200);
    assertThat(answer.headers().firstValue("Content-Type").orElseThrow())
        .startsWith("application/pdf");
    return Printed.of(answer.body());
  }

  @Test
  void oneLabelSaysWhatIsInTheBottleAndLeadsBackToItsPage()
      throws IOException, InterruptedException, ReaderException {
    Printed label = printed("/shelf/D/label.pdf");
    assertThat(label.pages()).isEqualTo(1);
    assertThat(label.widthMm()).isCloseTo(97, within(TOLERANCE_MM));
    assertThat(label.text())
        .contains("D-76", "stock, 1000 mL", "mixed 10 Jan 2026", "opened", "developer")
        .contains("batch 7, of the kitchen");
    assertThat(label.code()).isEqualTo(server.at("/shelf/D").toString());
    assertThat(server.get("/shelf/D").statusCode()).isEqualTo(200);
    assertThat(label.colour()).as("black on white").isLessThan(3);
    assertThat(label.lowestInkMm()).as("within the label").isLessThan(66);
    for (PDFont font : label.fonts()) {
      assertThat(font.isEmbedded()).as(font.getName()).isTrue();
    }
  }

  @Test
  void everyLabelCarriesACautionWithItsSource() throws IOException, InterruptedException {
    for (String letter : List.of("D", "F2", "W1")) {
      LabelView view =
          new LabelWish(letter, null).labels(server.wetside(), "http://x").labels().get(0);
      Printed label = printed("/shelf/" + letter + "/label.pdf");
      String first = view.cautions().get(0).text().replaceAll("\\s+", " ");
      String known =
          Known.words(view.cautions().get(0).standing(), view.cautions().get(0).source());
      assertThat(label.text()).as(letter).contains(first, known).doesNotContain("TRADE");
      assertThat(label.text()).as("no verdict").doesNotContain("discard", "test first", "spent");
    }
  }

  @Test
  void aSheetHoldsEightAndEachCodeLeadsToItsOwnBottle()
      throws IOException, InterruptedException, ReaderException {
    Printed sheet = printed("/shelf/labels/sheet.pdf");
    assertThat(sheet.pages()).as("nine labels").isEqualTo(2);
    assertThat(sheet.widthMm()).isCloseTo(210, within(TOLERANCE_MM));
    List<String> letters = List.of("D", "F2", "W1", "W2", "W3", "W4", "W5", "W6");
    for (int i = 0; i < letters.size(); i++) {
      assertThat(
              sheet.code(
                  12 + WIDE_MM * (i % 2), 20 + TALL_MM * Math.floorDiv(i, 2), WIDE_MM, TALL_MM))
          .isEqualTo(server.at("/shelf/" + letters.get(i)).toString());
    }
    assertThat(sheet.text()).contains("working 1+4, 500 mL");

    Printed two = printed("/shelf/labels/sheet.pdf?bottles=f2,D&paper=letter");
    assertThat(two.pages()).isEqualTo(1);
    assertThat(two.widthMm()).isCloseTo(215.9, within(TOLERANCE_MM));
    assertThat(two.code(15, 12, WIDE_MM, TALL_MM)).endsWith("/shelf/F2");
    assertThat(two.code(15 + WIDE_MM, 12, WIDE_MM, TALL_MM)).endsWith("/shelf/D");
  }

  @Test
  void theLongestNamesAndLettersStayOnTheLabel() throws IOException, InterruptedException {
    add(
        BottleLabel.of(
                "Q12",
                "sulfuric acid bleach of the reversal evening, second bath 12",
                BottleRole.WORKING,
                BathKind.BLEACH,
                Volume.ofMillilitres(500))
            .withDilution("1+9")
            .withBatch("the third of the winter")
            .withOwner("everybody who comes on Thursdays"));
    Printed label = printed("/shelf/Q12/label.pdf");
    assertThat(label.pages()).isEqualTo(1);
    assertThat(label.text()).contains("Q12", "second bath 12", "on Thursdays");
    assertThat(label.lowestInkMm()).isLessThan(66);
  }

  @Test
  void whatIsNotThereIsSaid() {
    assertThat(server.get("/shelf/X/label.pdf").statusCode()).isEqualTo(400);
    assertThat(server.get("/api/labels?bottles=D,X").body())
        .contains("no such bottle on the shelf");
    assertThat(server.get("/api/labels?bottles=d").body())
        .contains("\"letter\":\"D\"", "\"mixedOn\":\"2026-01-10\"", "\"openedOn\":null");
    assertThat(server.get("/shelf/D").body()).contains("href=\"/shelf/D/label.pdf\"");
    assertThat(server.get("/shelf").body()).contains("href=\"/shelf/labels/sheet.pdf\"");
  }
}
