package org.wetside.web.strip;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.web.OpenServer;

/** The forms and pages of the place Curves, by real HTTP. */
class StripPagesTest {
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

  private static Map<String, String> typed() {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("film", "TRI-X 400");
    fields.put("developer", "D-76");
    fields.put("dilution", "1+1");
    fields.put("minutes", "9:40");
    fields.put("temp", "20");
    fields.put("day", "2026-01-11");
    fields.put("light", "calibrated");
    fields.put("columns", "logH");
    fields.put("readings", InventedStrips.readings(0.62));
    fields.put("baseFog", "0.20");
    fields.put("note", "densitometer in the cellar");
    return fields;
  }

  private HttpResponse<String> post(Map<String, String> fields) {
    return server.postForm("/curves/new", InventedStrips.form(fields));
  }

  private String kept(Map<String, String> fields) {
    HttpResponse<String> answer = post(fields);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
    String path = answer.headers().firstValue("Location").orElseThrow();
    HttpResponse<String> page = server.get(path);
    assertThat(page.statusCode()).as(page.body()).isEqualTo(200);
    return page.body();
  }

  @Test
  void anEmptyPlaceSaysTheFirstStep() {
    assertThat(server.get("/curves").body())
        .contains("No film is measured yet", "/curves/new", "/curves/learning", "instruments");
  }

  @Test
  void aCalibratedStripOfTheRightContrastEarnsAnIsoSpeed() {
    String page = kept(typed());
    assertThat(page).contains("After 9:40", "ISO 200/24°", "the contrast of ISO 6 is <b>met");
    assertThat(page).contains("speed point −2.3", "nine in ten", "seed 1", "from memory");
    assertThat(page).contains("<svg", "densitometer in the cellar", "as you read it");
  }

  @Test
  void anotherLightIsNeverCalledIso() {
    Map<String, String> fields = typed();
    fields.put("light", "estimated");
    assertThat(kept(fields)).contains("<b>EI 1").contains("only for a calibrated light");
    fields.put("light", "relative");
    String relative = kept(fields);
    assertThat(relative)
        .contains("no speed that can be read", "relative exposures give no speed")
        .doesNotContain("<b>EI ", "<b>ISO ");
  }

  @Test
  void readingsByTabletAndByStopsMeanTheSameAsByLogExposure() {
    Map<String, String> fields = typed();
    StringBuilder tablet = new StringBuilder();
    StringBuilder steps = new StringBuilder();
    for (int step = 1; step <= 21; step++) {
      tablet.append(
          String.format(Locale.ROOT, "%.2f%s", 0.05 + 0.15 * (step - 1), step < 21 ? ", " : ""));
      double logH = -0.35 - (0.05 + 0.15 * (step - 1));
      steps.append(
          String.format(Locale.ROOT, "%d\t%.2f%n", step, InventedStrips.density(0.62, logH)));
    }
    fields.put("columns", "step");
    fields.put("clear", "-0.35");
    fields.put("tablet", tablet.toString());
    fields.put("readings", steps.toString());
    assertThat(kept(fields)).contains("ISO 200/24°", "class=\"edge\"", "band of the curve");
    assertThat(server.get("/curves/1/change").body())
        .contains("step,density", "0.05, 0.2, 0.35", "densitometer in the cellar");
  }

  private void keptTablet(double add) {
    StringBuilder steps = new StringBuilder();
    for (int step = 1; step <= 21; step++) {
      steps.append(String.format(Locale.ROOT, "%d,%.2f\n", step, add + 0.05 + 0.15 * (step - 1)));
    }
    Map<String, String> tablet = new LinkedHashMap<>();
    tablet.put("name", "no. 2");
    tablet.put("origin", "invented");
    tablet.put("steps", steps.toString());
    assertThat(server.postForm("/curves/tablets", InventedStrips.form(tablet)).statusCode())
        .isEqualTo(303);
  }

  private static Map<String, String> bySteps() {
    Map<String, String> fields = typed();
    StringBuilder steps = new StringBuilder();
    for (int step = 1; step <= 21; step++) {
      double logH = -0.35 - (0.05 + 0.15 * (step - 1));
      steps.append(
          String.format(Locale.ROOT, "%d,%.2f%n", step, InventedStrips.density(0.62, logH)));
    }
    fields.put("columns", "step");
    fields.put("clear", "-0.35");
    fields.put("readings", steps.toString());
    return fields;
  }

  @Test
  void aKeptTabletFillsTheStepsWithItsOwnDensities() {
    assertThat(server.get("/curves/new").body())
        .contains("Write a tablet down once")
        .doesNotContain("name=\"keptTablet\"");
    keptTablet(0);
    assertThat(server.get("/curves/new").body()).contains("no. 2, 21 steps");
    Map<String, String> fields = bySteps();
    fields.put("keptTablet", "no. 2");

    assertThat(kept(fields)).contains("ISO 200/24°", "<dt>tablet</dt><dd>no. 2</dd>");
    assertThat(server.get("/api/curves/1").body())
        .contains("\"tabletName\":\"no. 2\"", "\"tablet\":[0.05,0.2,0.35");

    // corrected later, the tablet changes no strip of earlier, and says so when that is read again
    keptTablet(0.01);
    assertThat(server.get("/curves/1").body()).contains("ISO 200/24°");
    fields.put("tablet", "0.05, 0.20, 0.35");
    HttpResponse<String> refused = server.postForm("/curves/1/change", InventedStrips.form(fields));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("not the densities that no. 2 has now", "0.05, 0.20, 0.35", "21,0.20");
    fields.put("keptTablet", "no. 3");
    assertThat(post(fields).body()).contains("keptTablet-message", "there is none of that name");
  }

  /** An invented scanner of 60000 times the transmission, calibrated to density 1.0. */
  @Test
  void anInstrumentIsChosenWithItsLimits() {
    keptTablet(0);
    server.postForm("/curves/instruments", "name=flatbed&kind=scanner&note=");
    assertThat(server.get("/curves/new").body()).doesNotContain("flatbed");
    Map<String, String> fields = typed();
    fields.put("instrument", "flatbed");
    assertThat(post(fields).body()).contains("calibrate it by a tablet first");
    StringBuilder seen = new StringBuilder();
    for (int step = 1; step <= 7; step++) {
      seen.append(step)
          .append(',')
          .append(Math.round(60000 * Math.pow(10, -(0.05 + 0.15 * (step - 1)))))
          .append('\n');
    }
    Map<String, String> calibration = new LinkedHashMap<>();
    calibration.put("tablet", "no. 2");
    calibration.put("on", "2026-01-10");
    calibration.put("method", "formula");
    calibration.put("seen", seen.toString());
    assertThat(
            server
                .postForm("/curves/instruments/flatbed/calibrate", InventedStrips.form(calibration))
                .statusCode())
        .isEqualTo(303);
    assertThat(server.get("/curves/new").body()).contains("flatbed, to density 0.950");

    HttpResponse<String> beyond = post(fields);
    assertThat(beyond.statusCode()).isEqualTo(422);
    assertThat(beyond.body())
        .contains("1.04, 1.13, 1.22", "reads nothing denser than 0.95", "value=\"TRI-X 400\"");

    fields.put("readings", InventedStrips.readings(0.62).replaceAll("(?m)^-[01]\\..*\n", ""));
    fields.put("calibratedOn", "2025-12-24");
    assertThat(post(fields).body())
        .contains("calibratedOn-message", "flatbed was calibrated on 2026-01-10")
        .contains("value=\"2025-12-24\"");
    fields.put("calibratedOn", "");
    assertThat(kept(fields))
        .contains(
            "read by</dt><dd>flatbed, calibrated 2026-01-10", "±0.03", "±0.1 in log exposure");
    assertThat(server.get("/api/curves/1").body())
        .contains("\"instrument\":\"flatbed\"", "\"calibratedOn\":\"2026-01-10\"")
        .contains("\"claim\":\"", "±0.1 in log exposure");
    assertThat(server.get("/curves/1/change").body())
        .contains("name=\"calibratedOn\" type=\"date\" value=\"2026-01-10\"");

    server.postForm("/curves/instruments/flatbed/remove", "");
    String again = server.get("/curves/1/change").body();
    assertThat(again).contains("flatbed, cannot be chosen");
    fields.put("instrument", "");
    fields.put("calibratedOn", "2026-01-10");
    assertThat(post(fields).body()).contains("say which instrument was calibrated then");
  }

  /** Steps 1, 2, 3 taken for log exposures would be a curve of nonsense. */
  @Test
  void aTabletIsRefusedWhereTheReadingsAreNotItsSteps() {
    keptTablet(0);
    Map<String, String> fields = bySteps();
    fields.put("keptTablet", "no. 2");
    fields.put("columns", "logH");
    HttpResponse<String> refused = post(fields);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("keptTablet-message", "say that they are step,density", "21,0.20");
  }

  @Test
  void whatIsReadAgainTakesThePlaceOfTheOldOne() {
    String first = kept(typed());
    assertThat(first).contains("no. 1");
    HttpResponse<String> again = server.postForm("/curves/1/change", InventedStrips.form(typed()));
    assertThat(again.headers().firstValue("Location")).contains("/curves/2");
    assertThat(server.get("/curves/1").statusCode()).isEqualTo(404);
    assertThat(server.postForm("/curves/2/withdraw", "").statusCode()).isEqualTo(303);
    assertThat(server.get("/curves").body()).contains("No film is measured yet");
  }

  @Test
  void repeatsAreAveragedFallsLevelledAndStepsThatLieOffNamed() {
    Map<String, String> fields = typed();
    String readings = InventedStrips.readings(0.62);
    // a second reading of one step, a fall of 0.01, and a step 0.06 too dense
    fields.put(
        "readings",
        readings
            .replace("-3.40,0.20", "-3.40,0.20\n-3.40,0.22")
            .replace("-1.00,1.13", "-1.00,1.19"));
    String page = kept(fields);
    assertThat(page)
        .contains("0.20, 0.22", "densities fell: taken as", "off by 0.0", "read it again");
  }

  /** Each kind of bad input has a message of its own, and everything typed stands there again. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "-3.0,1.2;-2.0,0.6;-1.0,0.2;-0.5,0.1 | 0.1 | they fall",
        "-3.0,0.2;-2.0,0.6 | 0.2 | at least 3",
        "-3.0,0.3;-2.0,0.6;-1.0,1.1;-0.5,1.3 | | unexposed part",
        "-3.0,0.3;-2.0,0.6x;-1.0,1.1 | 0.2 | 0.6x",
        "-3.0 0,3;-2.0 0,6;-1.0 1,1 | 0.2 | write a point"
      })
  void badReadingsAreRefusedAndNothingTypedIsLost(String lines, String fog, String message) {
    Map<String, String> fields = typed();
    fields.put("readings", lines.strip().replace(';', '\n'));
    fields.put("baseFog", fog == null ? "" : fog);
    HttpResponse<String> refused = post(fields);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("Not kept yet", message);
    for (String line : lines.strip().split(";", -1)) {
      assertThat(refused.body()).contains(line);
    }
    assertThat(refused.body())
        .contains("value=\"TRI-X 400\"", "value=\"9:40\"", "densitometer in the cellar");
    assertThat(server.get("/curves").body()).contains("No film is measured yet");
  }

  @Test
  void densitiesOfAPictureOpenTheFormAndRefuseNothingYet() {
    Map<String, String> handed = new LinkedHashMap<>();
    handed.put("readings", "1,0.31\n2,0.42");
    handed.put("baseFog", "0.2");
    handed.put("from", "strip.tif, flatbed");
    HttpResponse<String> page = post(handed);
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.body())
        .contains("1,0.31\n2,0.42", "strip.tif, flatbed", "value=\"0.2\"")
        .doesNotContain("Not kept yet");
  }

  @Test
  void everyFieldHasItsOwnMessage() {
    Map<String, String> fields = typed();
    fields.put("film", "");
    fields.put("minutes", "9,5");
    fields.put("baseFog", "0,2");
    fields.put("columns", "step");
    fields.put("readings", "1,0.2\n2,0.4\n3,0.8\n");
    String page = post(fields).body();
    assertThat(page)
        .contains("film-message", "minutes-message", "baseFog-message", "clear-message")
        .contains("tablet-message");
  }
}
