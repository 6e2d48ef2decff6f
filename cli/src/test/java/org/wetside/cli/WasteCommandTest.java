package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** {@code wetside waste}: its book and its two papers. Jugs are invented. */
class WasteCommandTest {
  private TypedHome home;
  private Path papers;

  @BeforeEach
  void jug(@TempDir Path folder) {
    home = new TypedHome(folder.resolve("home"));
    papers = folder;
    home.done("waste", "W1", "--add", "silver-bearing", "--holds", "5L");
    home.done("waste", "W1", "--pour", "F-24", "--bath", "fixer", "--volume", "900mL");
  }

  @Test
  void theHandInSheetAndTheLabelAreWrittenAsPdf() throws IOException {
    Path sheet = papers.resolve("sheet.pdf");
    assertThat(home.done("waste", "W1", "--pdf", sheet.toString()))
        .contains("sheet.pdf: the sheet to hand in with jug W1");
    assertThat(Paper.of(sheet).text())
        .contains("W1", "900 mL", "F-24", "received by", "local waste");
    assertThat(Paper.of(sheet).widthMm()).isBetween(209.5, 210.5);
    Path label = papers.resolve("label.pdf");
    assertThat(home.done("waste", "w1", "--pdf", label.toString(), "--label", "--paper", "letter"))
        .contains("label.pdf: the label of jug W1");
    assertThat(Paper.of(label).text())
        .contains("W1", "silver-bearing", "local waste")
        .doesNotContain("received by");
    assertThat(Paper.of(label).widthMm()).isBetween(215.4, 216.4);
  }

  @Test
  void throughARunningServerThePaperIsTheSame() throws IOException {
    Path alone = papers.resolve("alone.pdf");
    Path served = papers.resolve("served.pdf");
    home.done("waste", "W1", "--pdf", alone.toString());
    home.served(() -> home.done("waste", "W1", "--pdf", served.toString()));
    assertThat(Paper.of(served).text()).isEqualTo(Paper.of(alone).text());
  }

  @Test
  void programsReadMillilitresAndGrams() {
    JsonNode jug =
        home.json("waste", "W1", "--pdf", papers.resolve("s.pdf").toString()).get("jugs").get(0);
    assertThat(jug.get("filledMl").asDouble()).isEqualTo(900.0);
    assertThat(jug.get("holdsMl").asDouble()).isEqualTo(5000.0);
    assertThat(jug.get("silver").get("leastGrams").asDouble()).isEqualTo(2.7);
    assertThat(papers.resolve("s.pdf")).exists();
  }

  @Test
  void whatCannotBeIsRefusedAndNothingIsWritten() throws IOException {
    Path there = papers.resolve("there.pdf");
    Files.writeString(there, "mine");
    assertThat(home.refused("waste", "W1", "--pdf", there.toString()))
        .contains("file of the paper", "there.pdf", "--force");
    assertThat(home.refused("waste", "--pdf", papers.resolve("x.pdf").toString()))
        .contains("jug", "say which");
    assertThat(home.refused("waste", "W9", "--pdf", papers.resolve("x.pdf").toString()))
        .contains("W9");
    assertThat(home.refused("waste", "W1", "--label")).contains("--pdf");
    assertThat(
            home.refused("waste", "W1", "--pdf", papers.resolve("x.pdf").toString(), "--paper=a5"))
        .contains("paper \"a5\"", "a4 or letter");
    assertThat(
            home.refused(
                "waste",
                "W1",
                "--hand-in",
                "2026-01-14",
                "--to",
                "the quay",
                "--pdf",
                papers.resolve("x.pdf").toString()))
        .contains("choose one of", "--pdf");
    assertThat(papers.resolve("x.pdf")).doesNotExist();
    assertThat(there).hasContent("mine");
    assertThat(home.json("waste", "W1").get("jugs").get(0).get("filledMl").asDouble())
        .isEqualTo(900.0);
    home.done("waste", "W1", "--pdf", there.toString(), "--force");
    assertThat(Paper.of(there).pages()).isEqualTo(1);
  }

  /** Days to come, impossible volumes and what must not meet, with thing, value and limit. */
  @Test
  void badInputNamesThingValueAndLimit() {
    assertThat(home.refused("waste", "W1", "--hand-in", "2999-01-01", "--to", "the quay"))
        .contains("2999-01-01", "not after today");
    assertThat(
            home.refused("waste", "W1", "--pour", "F-24", "--bath", "fixer", "--volume", "4500mL"))
        .contains("volume poured in", "4500 mL");
    assertThat(home.refused("waste", "W1", "--pour", "F-24", "--bath", "fixer", "--volume", "-1mL"))
        .contains("-1");
    assertThat(home.refused("waste", "W2", "--add", "stop", "--holds", "0mL")).contains("0 mL");
    assertThat(home.refused("waste", "W1", "--bottle", "Q")).contains("bottle \"Q\"");
    assertThat(home.refused("waste", "W1", "--take-back", "first")).contains("first");
    assertThat(home.json("waste", "W1").get("jugs").get(0).get("filledMl").asDouble())
        .isEqualTo(900.0);
  }
}
