package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code wetside formula} and {@code wetside formulas} as they are typed. */
class FormulaCommandTest {
  private @TempDir Path home;

  private Typed type(String command, String... words) {
    List<String> all = new ArrayList<>(List.of("--home", home.toString(), command));
    all.addAll(List.of(words));
    return Typed.of(all.toArray(String[]::new));
  }

  @Test
  void weighsOutWithBothFactorsAndTheirSources() {
    Typed said =
        type(
            "formula",
            "D-76",
            "--make",
            "700mL",
            "--have",
            "sodium sulfite heptahydrate",
            "--balance",
            "0.1g");
    assertThat(said.exitCode()).as(said.err()).isZero();
    assertThat(said.out())
        .contains("3. sodium sulfite, heptahydrate: 140.04 g")
        .contains("× 2.0005, computed, CH-S53", "printed: 2.0, CH-S14, p.330")
        .contains(
            "dissolve 2 g in water to make 100 mL (2 %, common practice: our own choice",
            "take 70 mL")
        .contains("mix at least 1000 mL, or weigh on a balance that shows 0.01 g")
        .contains("Caution: ", "from memory");
  }

  /** Anhydrous 100 g/L (D-76) as heptahydrate: 252.14 / 126.04 = 2.0005 (CH-S53), 2.0 (CH-S14). */
  @Test
  void programsReadNamesGramsAndBothFactors() {
    Typed said =
        type(
            "formula",
            "D-76",
            "--make",
            "700mL",
            "--have",
            "sodium sulfite heptahydrate",
            "--balance",
            "0.1g",
            "--json");
    assertThat(said.exitCode()).as(said.err()).isZero();
    JsonNode view = JsonMapper.shared().readTree(said.out());
    for (JsonNode one : view.get("ingredients")) {
      assertThat(one.get("name").asString()).isNotEmpty();
      assertThat(one.has("weighable")).isTrue();
    }
    JsonNode sulfite =
        view.get("ingredients")
            .valueStream()
            .filter(one -> one.get("name").asString().contains("sulfite"))
            .findFirst()
            .orElseThrow();
    assertThat(sulfite.get("grams").asDouble()).isCloseTo(140.0, within(0.2));
    assertThat(sulfite.get("weighable").asBoolean()).isTrue();
    JsonNode exchanged = sulfite.get("substitution");
    assertThat(exchanged.get("factor").asDouble()).isCloseTo(2.0005, within(0.0005));
    assertThat(exchanged.get("source").get("id").asString()).isEqualTo("CH-S53");
    assertThat(exchanged.get("printedFactor").asDouble()).isEqualTo(2.0);
    assertThat(exchanged.get("printedSource").get("id").asString()).startsWith("CH-S14");
    assertThat(view.get("cautions").size()).as("of mixing itself").isPositive();
  }

  @Test
  void aRowPrintedTheWrongWayRoundIsNamedSo() throws IOException {
    Path lines = home.resolve("lye.txt");
    Files.writeString(lines, "500 mL water\n10 g potassium hydroxide\n1 L water to make\n");
    assertThat(type("formulas", "--add", "Lye", "--lines", lines.toString()).exitCode()).isZero();
    assertThat(type("formula", "lye", "--have", "sodium hydroxide").out())
        .contains("sodium hydroxide: 7.129 g", "WRONG WAY ROUND", "violently");
    assertThat(type("formulas").out()).contains("Lye", "your own, from memory");
    assertThat(type("formulas", "--remove", "lye").exitCode()).isZero();
    assertThat(type("formula", "lye").err()).contains("there is none of that name");
  }

  @Test
  void aBatchIsMixedByCommands() {
    assertThat(type("batches").out()).contains("Nothing was mixed");
    assertThat(type("batches", "--begin", "SB-8", "--make", "500mL").out())
        .contains("1  SB-8  500 mL", "[ ] 2. citric acid: 7.5 g");
    type("batches", "1", "--done", "1", "--amount", "375mL");
    assertThat(type("batches", "1", "--done", "2", "--amount", "7.6g").out())
        .contains("[x] 2. citric acid: 7.5 g, really 7.6 g (+1.3 %)");
    assertThat(type("batches", "1", "--undone", "2").out()).contains("[ ] 2. citric acid");
    assertThat(type("batches", "1", "--bottle", "S").err()).contains("not mixed yet");
    assertThat(type("batches", "1", "--done", "2").err()).contains("--amount");
    assertThat(type("batches", "7").exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
  }

  @Test
  void theCardIsWrittenOnceAndHistoryNever() {
    Path card = home.resolve("card.pdf");
    assertThat(type("formula", "F-24", "--make", "500mL", "--pdf", card.toString()).out())
        .contains("the mixing card of F-24");
    assertThat(card).isNotEmptyFile();
    assertThat(type("formula", "F-24", "--pdf", card.toString()).err()).contains("--force");
    Typed history = type("formula", "ARMY-STOP", "--pdf", home.resolve("no.pdf").toString());
    assertThat(history.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(history.err()).contains("ARMY-STOP", "history");
    assertThat(home.resolve("no.pdf")).doesNotExist();
  }

  @Test
  void whatCannotBeSaysThingValueAndLimit() {
    assertThat(type("formula", "D-76", "--balance", "0g").err())
        .contains("balance step \"0 g\" is refused: it must be more than 0 g");
    assertThat(type("formula", "D-76", "--make", "1mL").err())
        .contains("volume to make \"1 mL\"", "10 mL to 100 L");
    assertThat(type("formula", "X-9").exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(type("formulas", "--add", "A").err()).contains("--lines");
    assertThat(type("formulas", "--remove", "D-76").err()).contains("on file and stays");
  }
}
