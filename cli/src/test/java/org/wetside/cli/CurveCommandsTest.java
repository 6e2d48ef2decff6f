package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The hinge is row A of checks/synthetic_results.csv (CH-S99), the series row CI09 (DV-S08). */
class CurveCommandsTest {
  private static final String SERIES = "minutes,contrast\n5,0.50\n7:00,0.60\n9,0.65\n11,0.70\n";

  private @TempDir Path folder;

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("table.csv"), text);
  }

  private static String hinge(double from, int steps) {
    StringBuilder text = new StringBuilder("logH,density\n");
    for (int i = 0; i < steps; i++) {
      double logH = from + 0.15 * i;
      double density = 0.20 + Math.max(0, 0.62 * (logH + 2.80));
      text.append(String.format(Locale.ROOT, "%.2f,%.6f%n", logH, density));
    }
    return text.toString();
  }

  private static JsonNode json(Typed typed) {
    assertThat(typed.err()).isEmpty();
    assertThat(typed.exitCode()).isEqualTo(ExitCode.DONE);
    return JsonMapper.shared().readTree(typed.out());
  }

  @Test
  void aCalibratedCurveHasItsIsoSpeed() throws IOException {
    Path readings = file(hinge(-3.40, 21));
    JsonNode curve =
        json(
            Typed.of("curve", readings.toString(), "--base-fog", "0.20", "--calibrated", "--json"));

    assertThat(curve.get("logHm").asDouble()).isCloseTo(-2.63871, within(0.001));
    assertThat(curve.get("deltaD").asDouble()).isCloseTo(0.806, within(0.001));
    assertThat(curve.get("contrast").asString()).startsWith("met");
    assertThat(curve.get("isoSpeed").asDouble()).isEqualTo(320);
    assertThat(curve.get("isoDegrees").asInt()).isEqualTo(26);
    assertThat(curve.get("exposureIndex").asDouble()).isCloseTo(348.177, within(1.0));
    assertThat(curve.get("averageGradient").asDouble()).isCloseTo(0.62, within(0.001));
    assertThat(curve.get("contrastIndex").asDouble()).isCloseTo(0.62, within(0.001));
    for (String name :
        new String[] {
          "logHm",
          "deltaD",
          "deltaX",
          "exposureIndex",
          "averageGradient",
          "contrastIndex",
          "isoSpeed",
          "isoDegrees"
        }) {
      assertThat(curve.get(name + "Band").size()).as(name).isEqualTo(2);
    }
    assertThat(Typed.of("curve", readings.toString(), "--base-fog=0.20").out())
        .contains("Exposure index 348", "contrast index", "0.62");
  }

  @Test
  void withoutCalibrationNothingIsCalledIso() throws IOException {
    JsonNode curve = json(Typed.of("curve", file(hinge(-3.40, 21)).toString(), "--json"));

    assertThat(curve.get("isoSpeed").isNull()).isTrue();
    assertThat(curve.get("isoDegrees").isNull()).isTrue();
    assertThat(curve.get("baseFogFound").asBoolean()).isTrue();
    assertThat(curve.get("exposureIndex").asDouble()).isCloseTo(348.177, within(1.0));
  }

  @Test
  void whatEndsBeyondTheReadingsIsNull() throws IOException {
    JsonNode curve = json(Typed.of("curve", file(hinge(-3.40, 13)).toString(), "--json"));

    assertThat(curve.get("contrastIndex").isNull()).isTrue();
    assertThat(curve.get("contrastIndexBand").isNull()).isTrue();
    assertThat(curve.get("remarks").toString()).contains("contrast index", "not determinable");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          two steps          | -3.0,0.20;-2.0,0.60                     | at least 3 different exposures
          densities fall     | -3.0,1.20;-2.5,0.80;-2.0,0.50;-1.5,0.20 | they fall
          base is missing    | -3.0,0.40;-2.5,0.60;-2.0,0.90;-1.5,1.20 | base plus fog
          letters            | -3.0,0.20;-2.5,0.3O;-2.0,0.50           | line 3: density "0.3O"
          comma, two numbers | -3.0,0.20;-2,5,0,30;-2.0,0.50           | line 3: line "-2,5,0,30" is refused: its decimal mark is a comma
          comma, quoted      | -3.0,0.20;"-2,5","0,30";-2.0,0.50       | decimal mark is a comma
          comma, once        | -3.0,0.20;-2.5,0,30;-2.0,0.50           | decimal mark is a comma
          three cells        | -3.0,0.20;-2.5,0.30,1;-2.0,0.50         | two numbers parted by a comma
          too dense          | -3.0,0.20;-2.5,0.30;-2.0,35             | between −0.1 and 6
          """)
  void badInputHasItsOwnMessage(String what, String rows, String message) throws IOException {
    String text = "logH,density\n" + rows.replace(';', '\n') + "\n";
    Typed typed = Typed.of("curve", file(text).toString());

    assertThat(typed.exitCode()).as(what).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).contains(message);
  }

  @Test
  void optionsAndFilesAreCheckedToo() throws IOException {
    Path readings = file(hinge(-3.40, 21));

    assertThat(Typed.of("curve", readings.toString(), "--base-fog=0,2").err()).contains("comma");
    assertThat(Typed.of("curve", readings.toString(), "--base-fog=clear").err())
        .contains("base plus fog", "clear");
    assertThat(Typed.of("curve").exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(Typed.of("curve", folder.resolve("none.csv").toString()).exitCode())
        .isEqualTo(ExitCode.NOT_DONE);
    assertThat(Typed.of("curve", file("x,y\n1,2\n").toString()).err()).contains("logH,density");
  }

  @Test
  void contrastSaysTheTimeAndDescribesTheSeries() throws IOException {
    Path series = file(SERIES);
    JsonNode answer = json(Typed.of("contrast", series.toString(), "--aim", "0.58", "--json"));

    assertThat(answer.get("minutes").asDouble()).isBetween(6.2, 6.8);
    assertThat(answer.get("minutesBand").get(0).asDouble())
        .isLessThan(answer.get("minutes").asDouble());
    assertThat(answer.get("minutesBand").get(1).asDouble())
        .isGreaterThan(answer.get("minutes").asDouble());
    assertThat(answer.get("fit").get("limit").asDouble()).isCloseTo(0.7748, within(0.001));
    assertThat(answer.get("fitRefused").isNull()).isTrue();
    assertThat(Typed.of("contrast", series.toString(), "--aim=0.58").out())
        .contains("for a contrast of 0.58", "nine in ten", "described by");
  }

  @Test
  void aSeriesThatNoExponentialDescribesSaysWhy() throws IOException {
    Path series = file("minutes,contrast\n5,0.50\n7,0.60\n9,0.72\n11,0.90\n");
    JsonNode answer = json(Typed.of("contrast", series.toString(), "--aim=0.65", "--json"));

    assertThat(answer.get("fit").isNull()).isTrue();
    assertThat(answer.get("fitRefused").asString()).contains("do not bend down");
  }

  @Test
  void outsideTheSeriesThereIsNoAnswer() throws IOException {
    Typed typed = Typed.of("contrast", file(SERIES).toString(), "--aim", "0.80", "--json");

    assertThat(typed.exitCode()).isEqualTo(ExitCode.NO_ANSWER);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).contains("0.80", "0.50", "0.70", "longer");
  }

  @Test
  void anAimAtTheEndLeavesTheBandOpen() throws IOException {
    JsonNode answer = json(Typed.of("contrast", file(SERIES).toString(), "--aim=0.70", "--json"));

    assertThat(answer.get("minutesBand").get(1).isNull()).isTrue();
    assertThat(answer.get("missedAbove").asDouble()).isBetween(0.3, 0.6);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          minutes,contrast;5,0.50                | 0.58 | two or more
          minutes,contrast;5,0.50;six,0.60       | 0.58 | development time "six"
          minutes,contrast;5,0.50;6,0.60         | 0,58 | decimal mark is a comma
          minutes,contrast;5,0.60;7,0.50;9,0.40  | 0.58 | contrast must rise with time
          minutes,contrast;0,0.50;6,0.60         | 0.58 | more than 0 s
          """)
  void badSeriesAreRefused(String rows, String aim, String message) throws IOException {
    Typed typed = Typed.of("contrast", file(rows.replace(';', '\n')).toString(), "--aim", aim);

    assertThat(typed.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(typed.err()).contains(message);
  }
}
