package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** {@code wetside test}: what was tried out by hand, written down. Bottles are invented. */
class TestCommandTest {
  private TypedHome home;

  @BeforeEach
  void bottles(@TempDir Path folder) {
    home = new TypedHome(folder);
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
        "1L");
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
        "--holds",
        "1L");
    home.done("rolls", "--add", "A-1 135 36 TRI-X 400 @400");
  }

  private JsonNode clearing(String seconds, String... more) {
    String[] asked = {
      "test", "F", "clearing", "--seconds", seconds, "--film", "TRI-X 400", "--temp", "20C"
    };
    return home.json(
        java.util.stream.Stream.concat(
                java.util.stream.Stream.of(asked), java.util.stream.Stream.of(more))
            .toArray(String[]::new));
  }

  /** Row CK38 (CH-S01, CH-S32): fresh 45 s: fix 90 s; spent when clearing takes 90 s. */
  @Test
  void aClearingTimeIsComparedWithTheFirst() {
    JsonNode first = clearing("45", "--fresh");
    assertThat(first.get("outcome").asString()).isEqualTo("baseline made");
    assertThat(first.get("seconds").asDouble()).isEqualTo(45.0);
    assertThat(first.get("temperatureC").asDouble()).isEqualTo(20.0);
    assertThat(first.get("dilution").asString()).isEqualTo("1+4");
    assertThat(first.get("fixing").get(0).get("seconds").asDouble()).isEqualTo(90.0);
    JsonNode later = clearing("60");
    assertThat(later.get("outcome").asString()).isEqualTo("passed");
    assertThat(later.get("timesBaseline").asDouble()).isBetween(1.333, 1.334);
    JsonNode spent = clearing("90", "--note", "milky");
    assertThat(spent.get("outcome").asString()).isEqualTo("failed");
    assertThat(spent.get("recall").asString()).isEqualTo("/shelf/recall");
    assertThat(home.done("bottles", "F")).contains("clip test failed");
  }

  @Test
  void peopleReadWhatCameOfItAndWhatToDo() {
    assertThat(
            home.done(
                "test",
                "f",
                "clearing",
                "--seconds=45",
                "--film=TRI-X 400",
                "--temp=68F",
                "--fresh"))
        .contains("Baseline made for bottle F: TRI-X 400 in 1+4 at 20 °C", "Fix for 1:30");
    assertThat(home.done("test", "F", "iodide", "--seen", "bad"))
        .contains("exhausted", "recall list: Shelf, Recall");
    assertThat(home.done("test", "D", "leader", "--seen", "good")).contains("Bottle D develops");
    assertThat(home.done("test", "film", "residue", "--rolls", "A-1", "--seen", "bad"))
        .contains("wash A-1 on");
    assertThat(home.done("test", "D", "leader", "--seen", "unsure", "--note", "lamp went out"))
        .contains("Nothing is said of bottle D: lamp went out");
  }

  @Test
  void anotherFilmOrTemperatureIsNotCompared() {
    clearing("45", "--fresh");
    JsonNode other =
        home.json(
            "test",
            "F",
            "clearing",
            "--seconds=80",
            "--film=T-MAX 400",
            "--temp=24C",
            "--dilution=1+9");
    assertThat(other.get("outcome").asString()).isEqualTo("not comparable");
    assertThat(other.get("differences").toString())
        .contains("another film", "another temperature", "another dilution");
  }

  @Test
  void whatCannotBeIsRefusedAndTheLedgerStays() {
    String before = home.json("bottles", "F").toString();
    assertThat(home.refused("test", "F", "clearing", "--seconds=45", "--temp=20C"))
        .contains("film of the clip", "it is needed");
    assertThat(home.refused("test", "F", "clearing", "--seconds=45", "--film=TRI-X 400"))
        .contains("temperature of the fixer");
    assertThat(
            home.refused("test", "F", "clearing", "--seconds=45", "--film=TRI-X 400", "--temp=60C"))
        .contains("60 °C", "0 to 50 °C");
    assertThat(
            home.refused("test", "F", "clearing", "--seconds=-5", "--film=TRI-X 400", "--temp=20C"))
        .contains("-5");
    assertThat(home.refused("test", "F", "clearing", "--seconds=soon"))
        .contains("--seconds", "soon")
        .doesNotContain("fault");
    assertThat(home.refused("test", "F", "leader", "--seen=good")).contains("fixer");
    assertThat(home.refused("test", "D", "iodide", "--seen=good")).contains("leader test");
    assertThat(home.refused("test", "F", "smell", "--seen=good"))
        .contains("kind of test \"smell\"", "clearing, leader, iodide or residue");
    assertThat(home.refused("test", "F", "iodide"))
        .contains("what was seen", "good, bad or unsure");
    assertThat(home.refused("test", "Q", "iodide", "--seen=good")).contains("\"Q\"");
    assertThat(home.refused("test", "film", "residue", "--seen=good")).contains("rolls");
    assertThat(home.refused("test", "film", "residue", "--rolls=A-9", "--seen=good"))
        .contains("A-9");
    assertThat(home.refused("test", "film", "clearing", "--seen=good")).contains("residue test");
    assertThat(home.refused("test")).contains("BOTTLE");
    assertThat(home.json("bottles", "F").toString()).isEqualTo(before);
  }

  @Test
  void throughARunningServerTheSameIsWrittenDown() {
    clearing("45", "--fresh");
    String text =
        home.served(
            () -> {
              assertThat(home.refused("test", "F", "iodide", "--seen=maybe")).contains("maybe");
              return clearing("60").get("text").asString();
            });
    assertThat(text).isEqualTo("Bottle F fixes: clear in 1:00, 1.33 × the baseline.");
    assertThat(clearing("60").get("text").asString()).isEqualTo(text);
  }
}
