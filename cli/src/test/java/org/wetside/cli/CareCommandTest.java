package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** {@code wetside care}: replenishing step by step, and times by roll number. */
class CareCommandTest {
  private TypedHome home;

  @BeforeEach
  void bottles(@TempDir Path folder) {
    home = new TypedHome(folder);
    add("X", "XTOL");
    add("D", "D-76");
    add("M", "Millrace");
  }

  private void add(String letter, String contents) {
    home.done(
        "bottles",
        letter,
        "--add",
        "--contents",
        contents,
        "--bath",
        "developer",
        "--role",
        "stock",
        "--use",
        "replenished",
        "--holds",
        "1L");
  }

  /**
   * 70 mL a roll is recalled (CH-S91); never more than 2 to 3 % of the volume at once (CH-S13): a
   * litre takes two rolls' 140 mL in seven parts of 20 mL or fewer of up to 30 mL.
   */
  @Test
  void replenisherGoesInByPartsAndTheMarkIsKept() {
    JsonNode care = home.json("care", "X", "--rolls", "2");
    assertThat(care.get("letter").asString()).isEqualTo("X");
    assertThat(care.get("replenisherMl").asDouble()).isEqualTo(140.0);
    assertThat(care.get("replenisherStanding").asString()).isEqualTo("from memory");
    assertThat(care.get("replenisherSource").asString()).contains("CH-S91");
    double most = care.get("mostAtOnceMl").asDouble();
    assertThat(most).isBetween(20.0, 30.0);
    assertThat(care.get("mostAtOnceSource").asString()).contains("CH-S13");
    double added = 0;
    for (JsonNode part : care.get("parts")) {
      assertThat(part.get("addMl").asDouble()).isLessThanOrEqualTo(most);
      assertThat(part.get("outMl").asDouble() - part.get("backMl").asDouble())
          .isCloseTo(part.get("wasteMl").asDouble(), within(1e-9));
      added += part.get("addMl").asDouble();
    }
    assertThat(added).isCloseTo(140.0, within(1e-9));
    assertThat(home.done("care", "X", "--rolls", "2"))
        .contains("Replenisher: 140 mL", "from memory", "CH-S13", "take out ", "to the mark");
  }

  @Test
  void theLeafletsRateComesBeforeTheOneOnFile() {
    JsonNode care = home.json("care", "X", "--per-roll", "44mL");
    assertThat(care.get("replenisherMl").asDouble()).isEqualTo(44.0);
    assertThat(care.get("replenisherStanding").asString()).isEqualTo("measured");
  }

  @Test
  void withoutARateNoneIsInvented() {
    assertThat(home.done("care", "M"))
        .contains("No rate of replenishing is on file", "--per-roll")
        .doesNotContain("take out");
    assertThat(home.json("care", "M").get("replenisherMl").isNull()).isTrue();
  }

  /** Rows P016 to P018 (DV-T06 p.3): the first four rolls of a litre of D-76 take 7.5 min. */
  @Test
  void aMakersTableSaysTheTimeOfTheNextRoll() {
    JsonNode table = home.json("care", "D").get("tables").get(0);
    assertThat(table.get("nextRoll").asInt()).isEqualTo(1);
    assertThat(table.get("nextSeconds").asLong()).isEqualTo(450);
    assertThat(table.get("volumeMl").asDouble()).isEqualTo(1000.0);
    assertThat(table.get("source").asString()).contains("DV-T06");
    assertThat(home.done("care", "D")).contains("roll 1 of 1000 mL takes 450 s");
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThat(home.refused("care", "Q")).contains("bottle \"Q\"", "none stands on the shelf");
    assertThat(home.refused("care", "X", "--rolls", "-2")).contains("-2", "0");
    assertThat(home.refused("care", "X", "--rolls", "two"))
        .contains("--rolls", "two")
        .doesNotContain("fault");
    assertThat(home.refused("care", "X", "--per-roll", "44"))
        .contains("volume \"44\"", "say the unit");
    assertThat(home.refused("care", "X", "--per-roll", "-1mL")).contains("-1");
    assertThat(home.refused("care")).contains("LETTER");
  }

  @Test
  void throughARunningServerEverythingIsTheSame() {
    String alone = home.done("care", "X", "--rolls", "2", "--per-roll", "44mL");
    String json = home.json("care", "D").toString();
    String served =
        home.served(
            () -> {
              assertThat(home.json("care", "D").toString()).isEqualTo(json);
              assertThat(home.refused("care", "Q")).contains("bottle \"Q\"");
              assertThat(home.refused("care", "X", "--rolls", "-2")).contains("-2");
              return home.done("care", "X", "--rolls", "2", "--per-roll", "44mL");
            });
    assertThat(served).isEqualTo(alone);
  }
}
