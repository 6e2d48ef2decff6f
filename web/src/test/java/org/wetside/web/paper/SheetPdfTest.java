package org.wetside.web.paper;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.ReaderException;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.core.bath.BathKind;
import org.wetside.core.plan.ChosenTime;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.LoadState;
import org.wetside.core.plan.Recipe;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.source.Standing;
import org.wetside.store.Bottles;
import org.wetside.store.Database;
import org.wetside.store.Loads;
import org.wetside.web.OpenServer;
import org.wetside.web.bench.StoredLoad;

/** The run sheet as it leaves a real server, read back. Load and rolls are invented. */
class SheetPdfTest {
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-01-15T19:52:00Z"), ZoneOffset.UTC);

  private @TempDir Path home;
  private OpenServer server;
  private long load;

  @BeforeEach
  void open() {
    load = StoredLoad.in(home);
    server = new OpenServer(home, NOON);
  }

  @AfterEach
  void close() {
    server.close();
  }

  @Test
  void aLoadIsOnePageWithAllThatIsDoneByTheClockAndFromTheStart() throws IOException {
    Printed page = Printed.of(get("/loads/" + load + "/sheet.pdf?start=20:03:30"));
    assertThat(page.pages()).isEqualTo(1);
    SheetView sheet = view(load, "20:03:30");
    SheetWords words = new SheetWords(sheet, Units.METRIC);
    assertThat(page.text())
        .contains("A-2 and A-1 in Double", "First pour assumed at", "20:03:30", "A-1 bottom reel")
        .contains("Reel dry and whole", "page 1 of 1")
        .contains("300 mL and 300 mL water", "600 mL", "19.5 to 20.5 °C")
        .contains("no caution on file: read the maker's safety data sheet first")
        .contains("CH-S14, p.171");
    assertThat(sheet.steps()).hasSize(7);
    for (SheetView.SheetStep step : sheet.steps()) {
      assertThat(page.text())
          .contains(words.clock(step.beginAt()) + " " + words.fromStart(step.beginAt()))
          .contains(words.clock(step.drainAt()), step.word() + " in");
    }
    for (String tick : sheet.steps().get(0).bouts()) {
      assertThat(page.text()).contains(words.within(tick));
    }
    assertThat(sheet.baths())
        .extracting(SheetView.SheetBath::bottle)
        .containsExactly("D", "S", "F", "W", "P");
  }

  /** The names in the bottles are invented and on no list of hazards. */
  @Test
  void whatHasNoCautionIsNamedAtItsOwnBathOnly() {
    bottle("F", "quick salt", BathKind.FIXER);
    bottle("P", "sheeter", BathKind.FINAL_RINSE);
    List<SheetView.SheetCare> care =
        view(load, "20:03:30").care().stream()
            .filter(one -> one.text().contains("no caution on file"))
            .toList();
    String none = "no caution on file: read the maker's safety data sheet first";
    assertThat(care)
        .extracting(one -> String.join(", ", one.baths()) + " | " + one.text())
        .containsExactly(
            "developer | soup: " + none,
            "fixer | quick salt: " + none,
            "final rinse | sheeter: " + none,
            "stop bath, wash aid | " + none);
  }

  private void bottle(String letter, String contents, BathKind bath) {
    try (Database database = Database.open(home.resolve("wetside.db"))) {
      Volume litre = Volume.ofLitres(1);
      BottleLabel label = BottleLabel.of(letter, contents, BottleRole.WORKING, bath, litre);
      database.inTransaction(
          session -> {
            new Bottles(session).add(label, litre, NOON.instant());
            return label;
          });
    }
  }

  @Test
  void theCodeIsReadBackFromThePictureOfThePage() throws IOException, ReaderException {
    assertThat(Printed.of(get("/loads/" + load + "/sheet.pdf")).code())
        .isEqualTo(server.at("/loads/" + load).toString());
    server.postJson("/api/runs", "{\"load\":" + load + "}");
    Printed run = Printed.of(get("/bench/1/sheet.pdf"));
    assertThat(run.code()).isEqualTo(server.at("/bench/1").toString());
    assertThat(server.get("/bench/1").statusCode()).isEqualTo(200);
  }

  @Test
  void itIsBlackOnWhiteInItsOwnFacesAndFitsBothPapers() throws IOException {
    Printed a4 = Printed.of(get("/loads/" + load + "/sheet.pdf"));
    Printed letter = Printed.of(get("/loads/" + load + "/sheet.pdf?paper=letter"));
    assertThat(a4.fonts()).isNotEmpty().allMatch(PDFont::isEmbedded);
    assertThat(a4.fonts())
        .extracting(font -> font.getName().replaceFirst("^[A-Z]+\\+", ""))
        .allMatch(name -> name.startsWith("Archivo") || name.startsWith("SourceSerif"));
    assertThat(a4.colour()).isZero();
    assertThat(a4.widthMm()).isBetween(209.5, 210.5);
    assertThat(letter.widthMm()).isBetween(215.4, 216.4);
    assertThat(letter.pages()).isEqualTo(1);
    assertThat(a4.lowestInkMm()).as("the height of US Letter, less its edge").isLessThan(274);
  }

  @Test
  void everyBuiltInProcessFitsOnePage() throws IOException {
    List<FilmProcess> all = server.wetside().findProcess().all();
    assertThat(all).hasSizeGreaterThan(5);
    for (FilmProcess process : all) {
      long one = loadOf(process.slug());
      Printed page = Printed.of(get("/loads/" + one + "/sheet.pdf"));
      assertThat(page.pages()).as(process.slug()).isEqualTo(1);
      assertThat(page.text()).contains("Hang", process.name());
    }
  }

  @Test
  void aRunTooLongForOnePageGoesOnOnASecondAndLosesNothing() throws IOException {
    SheetView sheet = view(load, "20:00");
    List<SheetView.SheetStep> many =
        java.util.stream.IntStream.range(0, 5)
            .boxed()
            .flatMap(i -> sheet.steps().stream())
            .toList();
    SheetView longer = with(sheet, many);
    Printed pages = Printed.of(SheetPdf.of(longer, Units.METRIC, SheetWish.Paper.A4));
    assertThat(pages.pages()).isEqualTo(2);
    assertThat(pages.text())
        .contains("page 1 of 2", "page 2 of 2", "Hang", "A developer cannot be");
    assertThat(pages.text().split("Fixer in", -1)).hasSize(6);
  }

  @Test
  void whatIsTypedWrongIsRefusedWithItsLimit() {
    assertThat(server.get("/loads/" + load + "/sheet.pdf?start=late").body())
        .contains("a time of the day such as 20:05");
    assertThat(server.get("/loads/" + load + "/sheet.pdf?paper=a3").body())
        .contains("a4 or letter");
    assertThat(server.get("/api/loads/77/sheet").statusCode()).isEqualTo(400);
  }

  @Test
  void plainTextSaysTheSame() {
    String text = server.get("/loads/" + load + "/sheet.txt?start=20:03:30").body();
    assertThat(text)
        .contains("20:03:30  0:00        D       [ ] Developer in, 10 s, then 9:00. Cap only")
        .contains("20:12:25  8:55", "[ ]04:40 [ ]05:40", "[ ] A-1  some film at 400, bottom reel");
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
  }

  private SheetView view(long id, String start) {
    String address = server.at("/").toString().replaceFirst("/$", "");
    return new ReadSheet(server.wetside(), address).ofLoad(id, new SheetWish(start, null));
  }

  private static SheetView with(SheetView sheet, List<SheetView.SheetStep> steps) {
    return new SheetView(
        sheet.run(),
        sheet.load(),
        sheet.address(),
        sheet.name(),
        sheet.tank(),
        sheet.rolls(),
        sheet.process(),
        sheet.developer(),
        sheet.dilution(),
        sheet.temperatureC(),
        sheet.developmentSeconds(),
        sheet.standing(),
        sheet.source(),
        sheet.startAt(),
        sheet.startKnown(),
        sheet.endAt(),
        sheet.baths(),
        sheet.checks(),
        steps,
        sheet.care(),
        sheet.zone(),
        sheet.printedAt(),
        sheet.demo());
  }

  private long loadOf(String process) {
    try (Database database = Database.open(home.resolve("wetside.db"))) {
      return database.inTransaction(
          session ->
              new Loads(session)
                  .add(
                      new Load(
                          0,
                          LoadState.PLANNED,
                          NOON.instant(),
                          List.of(new Load.Place("A-1", Optional.empty(), Optional.empty())),
                          "Double",
                          process,
                          new Recipe("D-76", Dilution.parse("1+1"), Temperature.ofCelsius(20)),
                          new ChosenTime(
                              Duration.ofMinutes(11),
                              Standing.PUBLISHED,
                              "leaflet",
                              Optional.empty()),
                          Volume.ofMillilitres(600),
                          Map.of(),
                          Optional.empty(),
                          "another"))
                  .id());
    }
  }

  private byte[] get(String path) {
    try {
      HttpResponse<byte[]> answer =
          HttpClient.newHttpClient()
              .send(
                  HttpRequest.newBuilder(server.at(path)).build(),
                  HttpResponse.BodyHandlers.ofByteArray());
      assertThat(answer.statusCode()).isEqualTo(200);
      return answer.body();
    } catch (IOException | InterruptedException failed) {
      throw new IllegalStateException(failed);
    }
  }
}
