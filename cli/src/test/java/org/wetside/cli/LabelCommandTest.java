package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** {@code wetside label}: labels of bottles as text, JSON and paper. Bottles are invented. */
class LabelCommandTest {
  private TypedHome home;
  private Path papers;

  @BeforeEach
  void bottles(@TempDir Path folder) {
    home = new TypedHome(folder.resolve("home"));
    papers = folder;
    home.done(
        "bottles",
        "D",
        "--add",
        "--contents",
        "D-76",
        "--bath",
        "developer",
        "--role",
        "stock",
        "--mixed",
        "2026-01-10",
        "--owner",
        "the kitchen",
        "--batch",
        "7",
        "--holds",
        "2L");
    home.done(
        "bottles",
        "F",
        "--add",
        "--contents",
        "rapid fixer",
        "--bath",
        "fixer",
        "--role",
        "working",
        "--dilution",
        "1+4",
        "--holds",
        "500mL");
  }

  @Test
  void saysWhatStandsOnEachWithCautionsAndTheirSources() {
    assertThat(home.done("label", "d"))
        .contains("D  D-76, stock  2000 mL  developer", "mixed 2026-01-10  opened -", "Caution: ")
        .contains("http://localhost:7373/shelf/D")
        .doesNotContain("rapid fixer");
    assertThat(home.done("label")).contains("D-76", "F  rapid fixer, working 1+4  500 mL");
  }

  @Test
  void programsReadTheVolumeInMillilitres() {
    JsonNode labels = home.json("label", "D", "F").get("labels");
    assertThat(labels).hasSize(2);
    assertThat(labels.get(0).get("fullMl").asDouble()).isEqualTo(2000.0);
    assertThat(labels.get(0).get("mixedOn").asString()).isEqualTo("2026-01-10");
    assertThat(labels.get(0).get("openedOn").isNull()).isTrue();
    assertThat(labels.get(0).get("owner").asString()).isEqualTo("the kitchen");
    assertThat(labels.get(1).get("dilution").asString()).isEqualTo("1+4");
    assertThat(labels.get(1).get("cautions")).isNotEmpty();
  }

  @Test
  void aSheetAndSinglesAreWrittenAsPdf() throws IOException {
    Path sheet = papers.resolve("labels.pdf");
    assertThat(home.done("label", "--pdf", sheet.toString())).contains("2 labels");
    assertThat(Paper.of(sheet).pages()).isEqualTo(1);
    assertThat(Paper.of(sheet).text()).contains("D-76", "rapid fixer", "1+4", "the kitchen");
    assertThat(Paper.of(sheet).widthMm()).isBetween(209.5, 210.5);
    home.done("label", "--pdf", sheet.toString(), "--force", "--paper", "letter");
    assertThat(Paper.of(sheet).widthMm()).isBetween(215.4, 216.4);
    Path single = papers.resolve("single.pdf");
    home.done("label", "--single", "--pdf", single.toString());
    assertThat(Paper.of(single).pages()).isEqualTo(2);
    assertThat(Paper.of(single).widthMm()).isBetween(96.5, 97.5);
  }

  @Test
  void whatCannotBeIsRefusedAndNoFileIsTouched() throws IOException {
    Path there = papers.resolve("there.pdf");
    Files.writeString(there, "mine");
    assertThat(home.refused("label", "Q")).contains("bottle \"Q\"", "no such bottle");
    assertThat(home.refused("label", "--pdf", there.toString()))
        .contains("file of the labels", "there.pdf", "--force");
    assertThat(home.refused("label", "--pdf", papers.toString())).contains("not a folder");
    assertThat(home.refused("label", "--pdf", papers.resolve("x.pdf").toString(), "--paper=a5"))
        .contains("paper \"a5\"", "a4 or letter");
    assertThat(papers.resolve("x.pdf")).doesNotExist();
    assertThat(there).hasContent("mine");
    Typed nowhere = home.type("label", "--pdf", papers.resolve("no/x.pdf").toString());
    assertThat(nowhere.exitCode()).isEqualTo(ExitCode.NOT_DONE);
    assertThat(nowhere.err()).contains("x.pdf");
    home.done("bottles", "D", "--discard");
    home.done("bottles", "F", "--discard");
    assertThat(home.refused("label")).contains("no bottle stands on the shelf");
  }

  @Test
  void throughARunningServerTheCodeLeadsToThatServer() throws IOException {
    Path sheet = papers.resolve("served.pdf");
    String said =
        home.served(
            () -> {
              home.done("label", "--pdf", sheet.toString());
              return home.done("label", "D");
            });
    assertThat(said).contains("D  D-76, stock  2000 mL").doesNotContain(":7373");
    assertThat(Paper.of(sheet).text()).contains("D-76", "rapid fixer");
  }
}
