package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.Wetside;
import org.wetside.app.demo.FillDemo;
import org.wetside.app.home.Home;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BathTest;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import tools.jackson.databind.JsonNode;

/**
 * {@code wetside recall} in the invented kitchen: three rolls went through a fixer that then fails.
 */
class RecallCommandTest {
  private TypedHome home;

  @BeforeEach
  void aFixerFails(@TempDir Path folder) {
    home = new TypedHome(folder);
    Clock real = Clock.system(ZoneId.systemDefault());
    try (Wetside wetside = FillDemo.into(new Home(folder), real)) {
      Volume litre = Volume.ofLitres(1);
      wetside
          .addBottle()
          .add(
              BottleLabel.of("G", "fresh fixer", BottleRole.WORKING, BathKind.FIXER, litre), litre);
      assertThat(wetside.readRecall().count()).isZero();
      wetside.changeBottle().tested("F", BathTest.CLIP, false, "milky");
    }
  }

  @Test
  void listsEveryRollSinceTheLastPassWithWhereItIsAndWhoseItIs() {
    home.done("recall", "TM-02", "--owner", "the harbour club");

    String said = home.done("recall");
    assertThat(said)
        .contains(
            "TM-01  TRI-X 400",
            "sleeve sleeve 26-1",
            "of the harbour club  fixed in F, fixer, ",
            "TM-03  T-MAX 100");
    assertThat(said.lines()).hasSize(3);
    JsonNode rolls = home.json("recall").get("rolls");
    assertThat(rolls).hasSize(3);
    assertThat(rolls.get(1).get("owner").asString()).isEqualTo("the harbour club");
    assertThat(rolls.get(0).get("bottle").asString()).isEqualTo("F");
    assertThat(rolls.get(0).get("fixedAt").asString()).endsWith("Z");
  }

  @Test
  void aRollThatWasFixedAgainLeavesTheListAndIsCountedInItsNewBath() {
    assertThat(home.done("recall", "TM-01", "--refixed", "--in", "G", "--note", "6 min"))
        .doesNotContain("TM-01")
        .contains("TM-02", "TM-03");
    JsonNode bottle = home.json("bottles", "G").get("bottles").get(0);
    assertThat(bottle.get("book").get(1).get("filmRolls").asDouble()).isEqualTo(1.0);
    assertThat(home.done("bottles", "F")).contains("rolls fixed again");
    home.done("recall", "TM-02", "--refixed");
    assertThat(home.done("recall", "TM-03", "--refixed"))
        .isEqualToIgnoringNewLines("No roll is to be fixed again.");
  }

  @Test
  void whatCannotBeIsRefusedAndTheListStays() {
    assertThat(home.refused("recall", "--refixed")).contains("roll", "say its number");
    assertThat(home.refused("recall", "TM-99", "--refixed"))
        .contains("roll \"TM-99\"", "it is not to be fixed again");
    assertThat(home.refused("recall", "TM-01", "--refixed", "--in", "F"))
        .contains("bottle \"F\"", "failed its test");
    assertThat(home.refused("recall", "TM-01", "--refixed", "--in", "D")).contains("does not fix");
    assertThat(home.refused("recall", "TM-01", "--refixed", "--in", "Q"))
        .contains("bottle \"Q\"", "no bottle of that letter");
    assertThat(home.refused("recall", "TM-99", "--owner", "nobody")).contains("no roll of that");
    assertThat(home.refused("recall", "TM-01", "--in", "G")).contains("--refixed");
    assertThat(home.json("recall").get("rolls")).hasSize(3);
  }

  @Test
  void throughARunningServerEverythingIsTheSame() {
    String alone = home.done("recall");
    String rest =
        home.served(
            () -> {
              assertThat(home.done("recall")).isEqualTo(alone);
              assertThat(home.refused("recall", "TM-01", "--refixed", "--in", "F"))
                  .contains("failed its test");
              home.done("recall", "TM-01", "--owner", "me");
              return home.done("recall", "TM-01", "--refixed", "--in", "G");
            });
    assertThat(rest).doesNotContain("TM-01").contains("TM-02", "TM-03");
    assertThat(home.done("recall")).isEqualTo(rest);
  }
}
