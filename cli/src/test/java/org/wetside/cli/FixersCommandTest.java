package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** {@code wetside fixers}: two baths one after the other, turned and ended. All is invented. */
class FixersCommandTest {
  private TypedHome home;

  @BeforeEach
  void bottles(@TempDir Path folder) {
    home = new TypedHome(folder);
    for (String letter : new String[] {"F", "G", "H", "I", "J"}) {
      add(letter, "fixer", "working");
    }
    add("D", "developer", "stock");
  }

  private void add(String letter, String bath, String role) {
    home.done(
        "bottles",
        letter,
        "--add",
        "--contents",
        "an invented " + bath,
        "--bath",
        bath,
        "--role",
        role,
        "--holds",
        "1L");
  }

  @Test
  void thePairTurnsThreeTimesAndThenBothGo() {
    assertThat(home.done("fixers")).contains("No two fixers are used after each other.");
    assertThat(home.done("fixers", "F", "--second", "G"))
        .contains("F then G, turned 0 times", "Discard F, use G first", "turn 1 of 3", "CH-S01");
    home.done("fixers", "F", "--spent", "--fresh", "H");
    home.done("fixers", "G", "--spent", "--fresh", "I");
    assertThat(home.done("fixers", "H", "--spent", "--fresh", "J"))
        .contains("I then J, turned 3 times", "Discard I and J", "CH-S14");
    assertThat(home.done("fixers", "I", "--spent")).contains("No two fixers");
    assertThat(home.done("bottles")).contains("D  an invented developer").doesNotContain("fixer");
  }

  @Test
  void programsReadLettersAndTurns() {
    home.done("fixers", "F", "--second", "G");
    JsonNode pair = home.json("fixers").get("pairs").get(0);
    assertThat(pair.get("first").asString()).isEqualTo("F");
    assertThat(pair.get("second").asString()).isEqualTo("G");
    assertThat(pair.get("rotations").asInt()).isZero();
    assertThat(pair.get("next").asString()).contains("fresh fixer second");
  }

  @Test
  void whatCannotBeIsRefusedAndNoBottleGoes() {
    assertThat(home.refused("fixers", "--second", "G")).contains("first fixer", "say the letter");
    assertThat(home.refused("fixers", "F", "--second", "F")).contains("it is the first one");
    assertThat(home.refused("fixers", "F", "--second", "D"))
        .contains("bottle \"D\"", "no fixer of working strength");
    assertThat(home.refused("fixers", "F", "--second", "Q")).contains("bottle \"Q\"");
    assertThat(home.refused("fixers", "F", "--spent", "--fresh", "H")).contains("in no pair");
    home.done("fixers", "F", "--second", "G");
    assertThat(home.refused("fixers", "F", "--spent")).contains("fresh fixer", "say the letter");
    assertThat(home.refused("fixers", "F", "--spent", "--fresh", "G")).contains("already one of");
    assertThat(home.refused("fixers", "H", "--second", "G")).contains("already one of a pair");
    assertThat(home.refused("fixers", "F", "--fresh", "H")).contains("--spent");
    assertThat(home.done("fixers")).contains("F then G, turned 0 times");
    assertThat(home.json("bottles").get("bottles")).hasSize(6);
  }

  @Test
  void throughARunningServerEverythingIsTheSame() {
    String alone = home.done("fixers", "F", "--second", "G");
    String turned =
        home.served(
            () -> {
              assertThat(home.done("fixers")).isEqualTo(alone);
              assertThat(home.refused("fixers", "F", "--spent")).contains("fresh fixer");
              return home.done("fixers", "F", "--spent", "--fresh", "H");
            });
    assertThat(turned).contains("G then H, turned 1 times");
    assertThat(home.done("fixers")).isEqualTo(turned);
  }
}
