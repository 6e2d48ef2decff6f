package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.Wetside;
import org.wetside.app.home.Home;
import org.wetside.app.home.ServerAddress;
import org.wetside.web.WebOptions;
import org.wetside.web.WebServer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * {@code wetside patches} and what it needs, with real files. Twelve steps side by side, each 20
 * pixels wide; pixels follow 60000 · 10^−D, densities 0.05, 0.20 … 1.70.
 */
class PatchesCommandTest {
  private @TempDir Path folder;

  @BeforeEach
  void write() throws IOException {
    picture(BufferedImage.TYPE_USHORT_GRAY, "tiff", "strip.tif");
    StringBuilder tablet = new StringBuilder("step,density\n");
    StringBuilder rectangles = new StringBuilder("label,x,y,width,height\n");
    for (int step = 1; step <= 12; step++) {
      tablet.append(String.format(Locale.ROOT, "%d,%.2f%n", step, density(step)));
      rectangles.append(step).append(',').append(20 * step - 16).append(",5,12,50\n");
    }
    Files.writeString(folder.resolve("tablet.csv"), tablet);
    Files.writeString(folder.resolve("r.csv"), rectangles);
  }

  private static double density(int step) {
    return 0.05 + 0.15 * (step - 1);
  }

  private void picture(int type, String format, String name) throws IOException {
    BufferedImage image = new BufferedImage(240, 60, type);
    for (int x = 0; x < 240; x++) {
      int value = (int) Math.round(60000 * Math.pow(10, -density(x / 20 + 1)));
      for (int y = 0; y < 60; y++) {
        image
            .getRaster()
            .setSample(x, y, 0, type == BufferedImage.TYPE_BYTE_GRAY ? value >> 8 : value);
      }
    }
    ImageIO.write(image, format, folder.resolve(name).toFile());
  }

  private Typed type(String home, String command) {
    List<String> all = new ArrayList<>(List.of("--home", folder.resolve(home).toString()));
    for (String word : command.split(" ", -1)) {
      all.add(
          word.endsWith(".tif") || word.endsWith(".csv") ? folder.resolve(word).toString() : word);
    }
    return Typed.of(all.toArray(String[]::new));
  }

  private String done(String home, String command) {
    Typed typed = type(home, command);
    assertThat(typed.exitCode()).as(command + ": " + typed.err()).isZero();
    return typed.out();
  }

  private String refused(String command) {
    Typed typed = type("alone", command);
    assertThat(typed.exitCode()).as(command).isEqualTo(ExitCode.WRONG_INPUT);
    return typed.err();
  }

  private List<String> scanning(String home) {
    return List.of(
        done(home, "instruments"),
        done(home, "instruments flatbed --add scanner --note 16bit"),
        done(home, "tablets T12 --add tablet.csv --origin sheet"),
        done(home, "tablets T12"),
        done(
            home,
            "calibrate flatbed --tablet T12 --picture strip.tif --rectangles r.csv --linear --day"
                + " 2026-01-10"),
        done(home, "instruments flatbed"),
        done(home, "patches strip.tif --rectangles r.csv --linear --instrument flatbed"),
        done(home, "patches strip.tif --rectangles r.csv --linear --instrument flatbed --json"));
  }

  @Test
  void theAnswersAreTheSameAloneAndThroughAServer() {
    List<String> alone = scanning("alone");
    Path served = folder.resolve("served");
    try (Wetside wetside = Wetside.open(served, Clock.systemUTC());
        WebServer server =
            WebServer.start(wetside, new WebOptions(0, false, Optional.of("secret")))) {
      new ServerAddress("http://127.0.0.1:" + server.port(), "secret").write(new Home(served));
      assertThat(scanning("served")).isEqualTo(alone);
    } finally {
      ServerAddress.remove(new Home(served));
    }
    JsonNode json = new JsonMapper().readTree(alone.get(7));
    assertThat(json.path("channel").asString()).isEqualTo("grey");
    for (int step = 1; step <= 12; step++) {
      JsonNode one = json.path("patches").get(step - 1);
      assertThat(one.path("mean").asDouble())
          .isCloseTo(60000 * Math.pow(10, -density(step)), within(0.5));
      assertThat(one.path("sd").asDouble()).isZero();
      assertThat(one.path("pixels").asInt()).isEqualTo(600);
      assertThat(json.path("densities").path("patches").get(step - 1).path("density").asDouble())
          .isCloseTo(density(step), within(0.0005));
    }
    assertThat(alone.get(6)).contains("±0.03", "nothing denser than 1.700");
  }

  @Test
  void withoutAnInstrumentNoHomeIsNeeded() {
    String text = done("never", "patches strip.tif --rectangles r.csv --linear");
    assertThat(text).contains("12  1197.0  0.0  600  0").doesNotContain("density");
    assertThat(folder.resolve("never")).doesNotExist();
  }

  @Test
  void badInputIsRefusedEachInItsWords() throws IOException {
    scanning("alone");
    picture(BufferedImage.TYPE_BYTE_GRAY, "tiff", "eight.tif");
    picture(BufferedImage.TYPE_BYTE_GRAY, "jpeg", "jpeg.tif");
    Files.writeString(folder.resolve("bad.csv"), "label,x,y,width,height\n1,0,0,9\n2,0,0,9,0\n");
    Files.writeString(folder.resolve("out.csv"), "1,230,0,90,9\n");

    assertThat(refused("patches strip.tif --rectangles r.csv"))
        .contains("says nothing", "gamma 1.0");
    assertThat(refused("patches eight.tif --rectangles r.csv --linear")).contains("8 bits");
    assertThat(refused("patches jpeg.tif --rectangles r.csv --linear")).contains("JPEG");
    assertThat(refused("patches none.tif --rectangles r.csv")).contains("no such file");
    assertThat(refused("patches strip.tif --linear")).contains("--rectangles");
    assertThat(refused("patches strip.tif --rectangles bad.csv --linear"))
        .contains("line 2", "five cells", "line 3", "height of patch 2");
    assertThat(refused("patches strip.tif --rectangles out.csv --linear")).contains("240×60");
    String read = "patches strip.tif --rectangles r.csv --linear --instrument ";
    assertThat(refused(read + "camera")).contains("camera", "none of that name");
    assertThat(refused(read + "flatbed --negative colour")).contains("colour", "unstained silver");
    assertThat(refused(read + "flatbed --negative grey")).contains("silver, stained or colour");
    assertThat(refused(read + "flatbed --flare 0,5")).contains("flare", "decimal mark");
    assertThat(refused("calibrate flatbed --tablet T12")).contains("--seen FILE or --picture");
    assertThat(refused("calibrate flatbed --tablet T9 --seen tablet.csv")).contains("T9");
    assertThat(refused("instruments box --add telescope")).contains("densitometer, scanner");
    assertThat(refused("instruments --add camera")).contains("say its name");
    assertThat(refused("tablets T2 --add tablet.csv")).contains("where they come from");
  }

  @Test
  void whenNothingCanBeReadItEndsWithOne() throws IOException {
    scanning("alone");
    StringBuilder seen = new StringBuilder();
    for (int step = 1; step <= 5; step++) {
      seen.append(step).append(',').append(60000 * Math.pow(10, -density(step))).append('\n');
    }
    Files.writeString(folder.resolve("five.csv"), seen);
    Files.writeString(folder.resolve("twelfth.csv"), "12,224,5,12,50\n");
    done("alone", "calibrate flatbed --tablet T12 --seen five.csv");

    Typed typed =
        type("alone", "patches strip.tif --rectangles twelfth.csv --linear --instrument flatbed");
    assertThat(typed.exitCode()).isEqualTo(ExitCode.NO_ANSWER);
    assertThat(typed.out()).contains("not read: darker than the densest usable step");
  }
}
