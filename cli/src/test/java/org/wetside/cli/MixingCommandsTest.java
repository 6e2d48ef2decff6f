package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.Volume;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class MixingCommandsTest {
  private static JsonNode json(Typed typed) {
    assertThat(typed.err()).isEmpty();
    assertThat(typed.exitCode()).isEqualTo(ExitCode.DONE);
    return JsonMapper.shared().readTree(typed.out());
  }

  @Test
  void mixSaysConcentrateAndWater() {
    JsonNode mix = json(Typed.of("mix", "1+31", "--total", "256mL", "--json"));
    assertThat(mix.get("concentrateMl").asDouble()).isEqualTo(8.0);
    assertThat(mix.get("waterMl").asDouble()).isEqualTo(248.0);
    assertThat(mix.get("cautions").get(0).get("text").asString())
        .isEqualTo("no caution on file: read the maker's safety data sheet first");
    assertThat(Typed.of("mix", "1+31", "--total", "256mL").out()).contains("8 mL", "248 mL");
  }

  @Test
  void mixWarnsOfAPartOfAPowderPackage() {
    Typed part =
        Typed.of("mix", "stock", "--total=500mL", "--package=1L", "--minimum=1mL", "--of=D-76");
    assertThat(part.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(part.out())
        .contains("Warning: part of the powder package of D-76", "dissolve the whole package")
        .contains("CH-S60");
    assertThat(Typed.of("mix", "stock", "--total=1L", "--package=1L").out())
        .doesNotContain("Warning");
  }

  @Test
  void aColonIsAskedAbout() {
    Typed typed = Typed.of("mix", "1:31", "--total", "256mL");
    assertThat(typed.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(typed.err()).contains("1+31").contains("1+30").contains("?");
  }

  @Test
  void mixChecksTheStockAgainstAMinimumAndAnUnknownOneStaysOpen() {
    String[] asked = {"mix", "1+31", "--total", "256mL", "--rolls", "2", "--json"};
    JsonNode open = json(Typed.of(asked));
    assertThat(open.get("stock").get("passed").asBoolean()).isFalse();
    assertThat(open.get("stock").get("verdict").asString()).contains("not on file");
    JsonNode little =
        json(Typed.of("mix", "1+31", "--total", "256mL", "--rolls=2", "--minimum=6mL", "--json"));
    assertThat(little.get("stock").get("verdict").asString()).isEqualTo("too little");
    assertThat(little.get("stock").get("neededMl").asDouble()).isEqualTo(12.0);
  }

  @Test
  void mixOfAKnownFormulaCautionsForEachIngredientAndSaysWhatIsRecalled() {
    JsonNode mix =
        json(Typed.of("mix", "1+1", "--total=600mL", "--of=D-76", "--rolls=1", "--json"));
    assertThat(mix.get("cautions").toString()).contains("metol", "hydroquinone", "borax");
    assertThat(mix.get("stock").get("standing").asString()).isEqualTo("from memory");
  }

  /** Row CK16 (CH-S99). */
  @Test
  void temperSaysHowMuchHot() {
    JsonNode temper =
        json(
            Typed.of(
                "temper", "--to", "20C", "--total", "1000mL", "--cold", "15C", "--hot", "50C",
                "--json"));
    assertThat(temper.get("hotMl").asDouble()).isBetween(144.2, 144.5);
    assertThat(temper.get("coldMl").asDouble()).isCloseTo(856.37, within(0.05));
    assertThat(temper.get("alternative").asString()).contains("15 °C");
  }

  @Test
  void temperSaysWhenItCannotBeReached() {
    Typed typed = Typed.of("temper", "--to=14C", "--total=1000mL", "--cold=17C", "--hot=50C");
    assertThat(typed.exitCode()).isEqualTo(ExitCode.NO_ANSWER);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).contains("14 °C cannot be reached", "the nearest is 17 °C");
  }

  @Test
  void temperCountsStockInAndCautionsAboveFifty() {
    Typed typed =
        Typed.of(
            "temper", "--to=20C", "--total=500mL", "--cold=9C", "--hot=90C", "--stock=250mL@18C");
    assertThat(typed.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(typed.out()).contains("stock", "22 °C", "scalds");
  }

  @Test
  void badInputNamesThingValueAndLimit() {
    Typed noUnit = Typed.of("temper", "--to=20", "--total=1L", "--cold=9C");
    assertThat(noUnit.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(noUnit.err()).contains("temperature", "\"20\"", "20C");
    Typed steam = Typed.of("temper", "--to=20C", "--total=1L", "--cold=9C", "--hot=120C");
    assertThat(steam.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(steam.err()).contains("120 °C", "100 °C");
    Typed nothing = Typed.of("temper", "--to=20C", "--cold=9C");
    assertThat(nothing.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(nothing.err()).contains("volume wanted");
  }

  @Test
  void driftFollowsTheReadings(@TempDir Path folder) throws IOException {
    Path readings = folder.resolve("r.csv");
    Files.writeString(readings, "elapsed,temp\n0:00,20C\n10:00,19C\n");
    JsonNode drift =
        json(
            Typed.of(
                "drift",
                "--readings",
                readings.toString(),
                "--room",
                "15C",
                "--aim=18C",
                "--to=10:00",
                "--json"));
    // τ = 10 min / ln(5/4)
    assertThat(drift.get("timeConstantSeconds").asDouble())
        .isCloseTo(600 / Math.log(1.25), within(0.01));
    assertThat(drift.get("inBandFromSeconds").asDouble()).isGreaterThan(600);
    assertThat(drift.get("meanC").asDouble()).isBetween(19.4, 19.6);
  }

  @Test
  void driftNamesEveryBadLineAndSaysWhenReadingsTellNothing(@TempDir Path folder)
      throws IOException {
    Path bad = folder.resolve("bad.csv");
    Files.writeString(bad, "elapsed,temp\n0:00,20\n5:00,19.5C\nlater,19C\n");
    Typed refused = Typed.of("drift", "--readings", bad.toString(), "--room=15C");
    assertThat(refused.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(refused.err()).contains("line 2", "line 4").doesNotContain("line 3");
    Path away = folder.resolve("away.csv");
    Files.writeString(away, "elapsed,temp\n0:00,20C\n10:00,21C\n");
    Typed none = Typed.of("drift", "--readings", away.toString(), "--room=15C");
    assertThat(none.exitCode()).isEqualTo(ExitCode.NO_ANSWER);
    Typed missing = Typed.of("drift", "--readings", folder.resolve("no.csv").toString());
    assertThat(missing.exitCode()).isEqualTo(ExitCode.NOT_DONE);
  }

  @Test
  void aMinimumTypedFromALeafletIsKnownToTheCommand(@TempDir Path home) {
    String[] asked = {
      "--home",
      home.toString(),
      "mix",
      "1+3",
      "--total",
      "600mL",
      "--of",
      "Millrace",
      "--rolls",
      "2"
    };
    assertThat(Typed.of(asked).out()).contains("minimum of stock per roll is not on file");
    try (Wetside wetside = Wetside.open(home, Clock.systemUTC())) {
      wetside.keepMinimum().put("Millrace", Volume.ofMillilitres(70), "an invented leaflet");
    }
    assertThat(Typed.of(asked).out())
        .contains("enough stock: 150 mL for a need of 140 mL", "published, an invented leaflet");
  }
}
