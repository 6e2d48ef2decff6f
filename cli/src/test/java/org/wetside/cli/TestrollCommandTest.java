package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.testroll.KeepTestRolls;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.testroll.PieceDeveloped;
import org.wetside.core.testroll.TestStep;
import org.wetside.core.testroll.TypedReading;
import tools.jackson.databind.JsonNode;

class TestrollCommandTest {
  private static final String[] PLAN = {
    "testroll", "TRI-X 400", "--ei", "400", "--metered", "1/60@f8", "--middle", "8min"
  };

  private @TempDir Path folder;

  private TypedHome home() {
    return new TypedHome(folder.resolve("home"));
  }

  private static String[] plan(String... more) {
    String[] all = Arrays.copyOf(PLAN, PLAN.length + more.length);
    System.arraycopy(more, 0, all, PLAN.length, more.length);
    return all;
  }

  @Test
  void theWholePlanIsPrinted() {
    assertThat(home().done(PLAN))
        .contains("Test roll: TRI-X 400", "5:45, 8:00, 11:15", "1/1000 at f/8", "418 mm", "456 mm");
  }

  @Test
  void programsGetEveryFrame() {
    JsonNode plan = home().json(PLAN);
    assertThat(plan.get("frames")).hasSize(36);
    // frame 10: four stops over; log10(8/400) + 4 x 0.30103
    JsonNode most = plan.get("frames").get(9);
    assertThat(most.get("stops").asDouble()).isEqualTo(4.0);
    assertThat(most.get("logH").asDouble()).isCloseTo(-0.4949, within(1e-4));
    assertThat(most.get("shutter").asString()).isEqualTo("1/4");
    assertThat(plan.get("steps")).hasSize(14);
  }

  @Test
  void theSheetIsWrittenAndNeverReplacedUnasked() throws IOException {
    Path sheet = folder.resolve("roll.pdf");
    home().done(plan("--sheet", sheet.toString(), "--paper", "letter"));
    assertThat(Files.readString(sheet, StandardCharsets.ISO_8859_1)).startsWith("%PDF-");
    assertThat(home().refused(plan("--sheet", sheet.toString()))).contains("roll.pdf", "--force");
    home().done(plan("--sheet", sheet.toString(), "--force"));
  }

  @Test
  void wrongWordsAreNamed() {
    TypedHome home = home();
    assertThat(home.refused("testroll", "--middle", "8min")).contains("metered exposure");
    assertThat(home.refused("testroll", "--metered", "1/60@f8")).contains("middle time");
    assertThat(home.refused(plan("--frames", "24"))).contains("frames", "log H 1.20");
    assertThat(home.refused(plan("--slowest", "2"))).contains("shutter speed", "2");
    assertThat(home.refused(plan("--smallest", "f/4"))).contains("1/60 at f/8", "2 stops less");
  }

  private List<String> weeks(TypedHome home, String sheet) {
    return List.of(
        home.done("testroll", "--kept"),
        home.done(plan("--developer", "D-76", "--dilution", "1+1", "--keep")),
        home.done(plan("--developer", "FX-1", "--keep", "--sheet", sheet)),
        home.done("testroll", "--kept"),
        home.done("testroll", "--kept", "1"),
        home.done("testroll", "--kept", "--json").replaceAll("\"keptAt\" : \"[^\"]*\"", ""),
        home.refused(plan("--keep")),
        home.refused("testroll", "TRI-X 400", "--metered", "1/60", "--middle", "8min", "--keep"));
  }

  @Test
  void aPlanIsKeptAndListedAloneAndThroughAServer() throws IOException {
    TypedHome alone = new TypedHome(folder.resolve("alone"));
    TypedHome served = new TypedHome(folder.resolve("served"));
    Path sheet = folder.resolve("kept.pdf");
    List<String> said = weeks(alone, sheet.toString());
    assertThat(Files.readString(sheet, StandardCharsets.ISO_8859_1)).startsWith("%PDF-");
    Files.delete(sheet);
    assertThat(served.served(() -> weeks(served, sheet.toString()))).isEqualTo(said);
    assertThat(sheet).exists();

    assertThat(said.get(0)).isEqualToIgnoringNewLines("No test roll is kept.");
    assertThat(said.get(1))
        .contains("Test roll 1: TRI-X 400 in D-76 1+1, begun ", "next: Measure the leader")
        .contains("[ ] Expose the 36 frames")
        .doesNotContain("[x]", "piece 1: developed");
    assertThat(said.get(2)).contains("Test roll 2: ", "kept.pdf: the sheet of a test roll");
    assertThat(said.get(3).lines().toList())
        .hasSize(2)
        .satisfiesExactly(
            newest -> assertThat(newest).startsWith("2  TRI-X 400 in FX-1, begun "),
            first -> assertThat(first).startsWith("1  ").contains("; next: Measure the leader"));
    assertThat(said.get(4)).isEqualTo(said.get(1));
    assertThat(said.get(6)).contains("developer", "needed where a test roll is kept");
    assertThat(said.get(7)).contains("metered exposure", "1/60");
  }

  @Test
  void whatWasDoneStandsInTheStateAndInItsJson() {
    TypedHome home = home();
    home.done(plan("--developer", "D-76", "--keep"));
    home.fill(
        wetside -> {
          KeepTestRolls rolls = wetside.sensitometry().keepTestRolls();
          rolls.tick(1, TestStep.LEADER, "L 104 mm");
          rolls.develop(
              1,
              1,
              new PieceDeveloped(
                  Duration.ofSeconds(350),
                  Optional.of(Temperature.ofCelsius(20.5)),
                  LocalDate.of(2026, 1, 20)),
              "");
          rolls.type(1, List.of(new TypedReading(2, "0.3l", ""), new TypedReading(3, "0.41", "")));
        });
    assertThat(home.done("testroll", "--kept", "1"))
        .contains("[x] Measure the leader", ": L 104 mm", "[ ] Fix two stops")
        .contains("piece 1: developed 5:50 at 20.5 °C on 2026-01-20, frames read: 2")
        .contains("next: Fix two stops")
        .doesNotContain("piece 2:");
    JsonNode one = home.json("testroll", "--kept", "1");
    assertThat(one.get("next").asString()).isEqualTo("gauge");
    assertThat(one.get("done")).hasSize(2);
    assertThat(one.get("pieces").get(0).get("developedSeconds").asDouble()).isEqualTo(350.0);
    assertThat(one.get("plan").get("frames")).hasSize(36);
    assertThat(home.json("testroll", "--kept").get("rolls")).hasSize(1);
  }

  @Test
  void wishesThatCannotBeMeantAreRefusedAndKeepNothing() {
    TypedHome home = home();
    assertThat(home.refused("testroll", "--kept", "7")).contains("test roll", "7", "none of that");
    assertThat(home.refused("testroll", "--kept", "one")).contains("one", "its number");
    assertThat(home.refused("testroll", "--kept", "1", "--keep")).contains("choose one of");
    assertThat(home.refused(plan("--kept", "1"))).contains("goes with --keep");
    assertThat(home.refused("testroll", "--kept", "--sheet", "x.pdf")).contains("to print");
    assertThat(home.refused(plan("--developer", "D-76", "--keep", "--paper", "foolscap")))
        .contains("paper", "foolscap");
    assertThat(
            home.refused(
                plan("--developer", "D-76", "--keep", "--sheet", folder.toString(), "--force")))
        .contains("not a folder");
    assertThat(home.done("testroll", "--kept")).contains("No test roll is kept.");
    assertThat(home.served(() -> home.type("testroll", "--kept", "7")).err())
        .contains("no test roll 7");
  }
}
