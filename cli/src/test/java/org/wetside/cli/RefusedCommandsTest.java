package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/**
 * What cannot be, typed as a command: exit code 2 with the thing, the value and the limit, and
 * nothing changed; through a server the same. Every bottle is invented.
 */
class RefusedCommandsTest {
  private static final String DISCARDED = "it was discarded on ";

  private TypedHome home;

  /** A command, and what is said of it. */
  static Stream<String[]> refusals() {
    return Stream.of(
            "bottles D --take 0mL|volume to take \"0 mL\" is refused: it must be above 0 mL",
            "bottles D --take 900mL|volume to take \"900 mL\" is refused: there are only 800 mL",
            "bottles D --take=-3mL|-3",
            "bottles D --take 300|300",
            "bottles D --top-up 300mL|the bottle holds 1000 mL and has 800 mL",
            "bottles D --top-up 10mL --out 900mL|there are only 800 mL",
            "bottles D --pour-back 300mL|the bottle holds 1000 mL and has 800 mL",
            "bottles D --correct 1001mL --note looked|the bottle holds 1000 mL",
            "bottles D --correct 500mL|reason of the correction",
            "bottles D --open 2999-01-01|day of opening \"2999-01-01\" is refused: it is still to"
                + " come",
            "bottles N --add --contents x --bath fixer --role stock --holds 0mL|0 mL",
            "bottles N --add --contents x --bath fixer --role stock --holds 1L --left 2L|\"2000"
                + " mL\" is refused: the bottle holds 1000 mL",
            "bottles N --add --contents x --bath fixer --role stock --holds 1L --mixed"
                + " 2999-01-01|day of mixing \"2999-01-01\" is refused: it is still to come",
            "formula D-76 --balance 0g|balance step \"0 g\" is refused: it must be more than 0 g",
            "formula D-76 --balance=-1g|balance step",
            "batches --begin D-76 --balance 0g|balance step \"0 g\" is refused: it must be more"
                + " than 0 g")
        .map(row -> row.split("\\|", -1));
  }

  @BeforeEach
  void bottle(@TempDir Path folder) {
    home = new TypedHome(folder);
    home.done(
        words(
            "bottles D --add --contents D-76 --bath developer --role stock --holds 1L --left"
                + " 800mL"));
  }

  private static String[] words(String command) {
    return command.split(" ", -1);
  }

  @ParameterizedTest
  @MethodSource("refusals")
  void isRefusedWithItsLimit(String command, String said) {
    assertThat(home.refused(words(command))).contains(said);
    nothingChanged();
  }

  @Test
  void throughARunningServerItIsRefusedInTheSameWords() {
    List<String> commands = refusals().map(row -> row[0]).toList();
    List<String> alone = commands.stream().map(one -> home.refused(words(one))).toList();
    List<String> served =
        home.served(() -> commands.stream().map(one -> home.refused(words(one))).toList());
    assertThat(served).isEqualTo(alone);
    nothingChanged();
  }

  private void nothingChanged() {
    JsonNode bottle = home.json("bottles", "D").get("bottles").get(0);
    assertThat(bottle.get("leftMl").asDouble()).isEqualTo(800.0);
    assertThat(bottle.get("book")).hasSize(1);
    assertThat(home.json("bottles").get("bottles")).hasSize(1);
    assertThat(home.json("batches").get("batches")).isEmpty();
  }

  @Test
  void aBottleThatWasDiscardedIsNotUsed() {
    home.done(words("bottles D --discard --note brown"));
    for (String act :
        List.of(
            "--take 10mL",
            "--top-up 10mL",
            "--pour-back 10mL",
            "--correct 10mL --note late",
            "--open",
            "--failed leader")) {
      assertThat(home.refused(words("bottles D " + act))).as(act).contains(DISCARDED);
    }
    assertThat(home.json("bottles", "D").get("bottles").get(0).get("book")).hasSize(2);
    assertThat(home.json("bottles").get("bottles")).isEmpty();
  }
}
