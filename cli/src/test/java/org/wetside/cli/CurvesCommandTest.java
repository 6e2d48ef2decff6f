package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/**
 * Strips kept by command. The tablet, the scanner (60000 times the transmission) and the film (0.20
 * and then 0.62 for every log exposure above −2.80) are invented.
 */
class CurvesCommandTest {
  private static final int STEPS = 21;
  private static final double CLEAR = -0.35;

  private @TempDir Path folder;

  @BeforeEach
  void write() throws IOException {
    StringBuilder tablet = new StringBuilder("step,density\n");
    StringBuilder seen = new StringBuilder();
    StringBuilder readings = new StringBuilder("step,density\n");
    StringBuilder thin = new StringBuilder("step,density\n");
    for (int step = 1; step <= STEPS; step++) {
      double density = 0.05 + 0.15 * (step - 1);
      double above = Math.max(0, CLEAR - density + 2.80);
      tablet.append(String.format(Locale.ROOT, "%d,%.2f%n", step, density));
      String line = String.format(Locale.ROOT, "%d,%.2f%n", step, 0.20 + 0.62 * above);
      readings.append(line);
      thin.append(step >= 9 ? line : "");
      if (step <= 7) {
        seen.append(String.format(Locale.ROOT, "%d,%.1f%n", step, 60000 * Math.pow(10, -density)));
      }
    }
    Files.writeString(folder.resolve("tablet.csv"), tablet);
    Files.writeString(folder.resolve("seen.csv"), seen);
    Files.writeString(folder.resolve("readings.csv"), readings);
    Files.writeString(folder.resolve("thin.csv"), thin);
  }

  private String file(String name) {
    return folder.resolve(name).toString();
  }

  private TypedHome home(String name) {
    return new TypedHome(folder.resolve(name));
  }

  private String[] adding(String wish, String... more) {
    return adding("readings.csv", wish, more);
  }

  private String[] adding(String readings, String wish, String[] more) {
    List<String> words =
        new ArrayList<>(
            List.of("curves", wish, file(readings), "--film", "TRI-X 400", "--minutes"));
    words.addAll(List.of("9:40", "--developer", "D-76", "--dilution", "1+1", "--base-fog", "0.20"));
    words.addAll(List.of("--light", "calibrated", "--clear", "-0.35"));
    words.addAll(List.of(more));
    return words.toArray(String[]::new);
  }

  private void tools(TypedHome home) {
    home.done("tablets", "T21", "--add", file("tablet.csv"), "--origin", "invented");
    home.done("instruments", "flatbed", "--add", "scanner");
    home.done(
        "calibrate",
        "flatbed",
        "--tablet",
        "T21",
        "--seen",
        file("seen.csv"),
        "--day",
        "2026-01-10");
    home.done("instruments", "cellar", "--add", "densitometer");
  }

  private List<String> evening(TypedHome home) {
    tools(home);
    return List.of(
        home.done("curves"),
        home.done(adding("--add", "--tablet", "t21", "--instrument", "cellar")),
        home.done("curves"),
        home.done("curves", "1", "--json"),
        home.refused(adding("--add", "--tablet", "T21", "--instrument", "flatbed")),
        home.refused(adding("--add", "--tablet", "T22")),
        home.done(
            Stream.concat(Stream.of(adding("--again", "--tablet", "T21")), Stream.of("1"))
                .toArray(String[]::new)),
        home.done("curves", "2", "--withdraw"),
        home.done(
            adding(
                "thin.csv",
                "--add",
                new String[] {
                  "--tablet", "T21", "--instrument", "flatbed", "--calibrated-on", "2026-01-10"
                })),
        home.refused(
            adding(
                "--add", "--tablet", "T21", "--instrument", "cellar", "--calibrated-on", "today")));
  }

  @Test
  void aKeptTabletAndInstrumentAreChosenAloneAndThroughAServer() {
    List<String> alone = evening(home("alone"));
    TypedHome served = home("served");
    assertThat(served.served(() -> evening(served))).isEqualTo(alone);

    assertThat(alone.get(0)).isEqualToIgnoringNewLines("No curve is kept.");
    assertThat(alone.get(1))
        .contains("1  TRI-X 400 in D-76 1+1, 9:40, light calibrated, 21 readings")
        .contains("tablet T21", "read by cellar", "ISO ", "average gradient");
    assertThat(alone.get(2)).contains("1  TRI-X 400 in D-76").doesNotContain("ISO");
    assertThat(alone.get(4)).contains("reads nothing denser than 0.95");
    assertThat(alone.get(5)).contains("tablet", "T22", "none of that name");
    assertThat(alone.get(6)).contains("2  TRI-X 400").doesNotContain("read by");
    assertThat(alone.get(7)).contains("No curve is kept.");
    assertThat(alone.get(8))
        .contains("read by flatbed, calibration of 2026-01-10", "±0.03", "±0.1 in log exposure");
    assertThat(alone.get(9)).contains("year-month-day");
  }

  @Test
  void theJsonIsThatOfTheStripAndItsCurve() {
    TypedHome home = home("json");
    tools(home);
    JsonNode kept = home.json(adding("--add", "--tablet", "T21", "--instrument", "cellar"));

    JsonNode strip = kept.path("curves").path(0);
    assertThat(strip.path("tabletName").asString()).isEqualTo("T21");
    assertThat(strip.path("tablet").size()).isEqualTo(STEPS);
    assertThat(strip.path("instrument").asString()).isEqualTo("cellar");
    assertThat(kept.path("shows").path("isoSpeed").isNumber()).isTrue();
    assertThat(home.json("curves").path("shows").isNull()).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          densities fall  | -3.0,1.2;-2.5,0.8;-2.0,0.5;-1.5,0.2 | they fall
          two steps       | -3.0,0.2;-2.0,0.6                   | at least 3 different exposures
          base is missing | -3.0,0.4;-2.5,0.6;-2.0,0.9;-1.5,1.2 | unexposed part
          letters         | -3.0,0.2;-2.5,0.3O;-2.0,0.5         | 0.3O
          decimal comma   | -3.0,0.2;-2,5,0,30;-2.0,0.5         | decimal mark is a comma
          """)
  void badReadingsAreRefusedEachInItsWordsAndNothingIsKept(String what, String rows, String message)
      throws IOException {
    TypedHome home = home("bad");
    Files.writeString(folder.resolve("bad.csv"), "logH,density\n" + rows.replace(';', '\n') + "\n");
    String[] words = {
      "curves",
      "--add",
      file("bad.csv"),
      "--film",
      "TRI-X 400",
      "--developer",
      "D-76",
      "--minutes",
      "9:40",
      "--light",
      "relative"
    };

    assertThat(home.refused(words)).as(what).contains(message);
    assertThat(home.done("curves")).isEqualToIgnoringNewLines("No curve is kept.");
  }

  @Test
  void wishesThatCannotBeMeantAreRefused() {
    TypedHome home = home("wishes");
    assertThat(home.refused("curves", "--add", file("readings.csv")))
        .contains("film", "developer", "development time", "light");
    assertThat(home.refused("curves", "--tablet", "T21")).contains("--add FILE");
    assertThat(home.refused("curves", "--withdraw")).contains("say its number");
    assertThat(home.refused("curves", "7")).contains("curve", "7", "none of that number");
    assertThat(home.refused("curves", "1", "--withdraw", "--again", file("readings.csv")))
        .contains("choose one of");
    assertThat(home.refused(adding("--add", "--densities", "0,05 0,20"))).contains("decimal mark");
  }
}
