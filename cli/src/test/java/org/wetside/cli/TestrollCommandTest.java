package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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
}
