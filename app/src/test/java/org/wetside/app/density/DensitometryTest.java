package org.wetside.app.density;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.Wetside;
import org.wetside.app.picture.TiffFile;
import org.wetside.core.instrument.Calibration;
import org.wetside.core.instrument.Instrument;
import org.wetside.core.instrument.InstrumentKind;
import org.wetside.core.instrument.Means;
import org.wetside.core.instrument.PatchDensity;
import org.wetside.core.instrument.PatchMeasure;
import org.wetside.core.instrument.PatchRectangle;
import org.wetside.core.instrument.StepTablet;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.sensitometry.Flare;
import org.wetside.core.sensitometry.NegativeKind;

/** The way from a tablet in a picture to densities, over a real home and real files. */
class DensitometryTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-01-14T19:00:00Z"), ZoneOffset.UTC);

  /** Means of a scanner and densities of the tablet under it, as published: SE-S21. */
  private static final double[][] SE_S21 = {
    {53988.92, 0.04}, {39777.25, 0.14}, {29026.15, 0.24}, {21050.88, 0.34}, {15321.55, 0.44},
    {11453.41, 0.54}, {8532.39, 0.63}, {6165.75, 0.74}, {4654.62, 0.84}, {3466.13, 0.94},
    {2626.01, 1.04}, {2011.48, 1.14}
  };

  @TempDir private Path home;
  private Wetside wetside;

  @BeforeEach
  void open() {
    wetside = Wetside.open(home, CLOCK);
    wetside
        .densitometry()
        .keepInstruments()
        .add(new Instrument("flatbed", InstrumentKind.SCANNER, "gamma 1.0"));
    wetside
        .densitometry()
        .keepTablets()
        .put(new StepTablet("T12", "SE-S21", TabletLines.parse(tabletLines())));
  }

  @AfterEach
  void close() {
    wetside.close();
  }

  private static String tabletLines() {
    StringBuilder lines = new StringBuilder("step,density\n");
    for (int i = 0; i < SE_S21.length; i++) {
      lines.append(i + 1).append(',').append(SE_S21[i][1]).append('\n');
    }
    return lines.toString();
  }

  private static String seenLines(double share) {
    StringBuilder lines = new StringBuilder("step,grey\n");
    for (int i = 0; i < SE_S21.length; i++) {
      lines.append(i + 1).append(String.format(Locale.ROOT, ",%.2f%n", SE_S21[i][0] * share));
    }
    return lines.toString();
  }

  private static Calibrate.Wish wish(String seen, String day) {
    return new Calibrate.Wish(
        "flatbed", "T12", LocalDate.parse(day), Calibration.Method.FORMULA, seen, "holder A");
  }

  private KnownInstrument flatbed() {
    return wetside.densitometry().keepInstruments().find("Flatbed").orElseThrow();
  }

  /**
   * A picture of twelve steps side by side, each 20 pixels wide, with the published means: they lie
   * between whole values, so that a share of the pixels of each patch is one brighter, as noise
   * makes them in a scanner.
   */
  private TiffFile strip() {
    return new TiffFile(240, 30)
        .pixels(
            (x, y) -> {
              double mean = SE_S21[x / 20][0];
              int below = (int) Math.floor(mean);
              int place = (x % 20 - 4 + 12 * y) * 7 % 360;
              return below + (place < (mean - below) * 360 ? 1 : 0);
            });
  }

  private static List<PatchRectangle> steps() {
    return new PatchRectangle("strip", 0, 0, 240, 30).divided(12, 1);
  }

  /** The fit leaves 0.0034 at the worst step, and no more when every mean is rounded to a whole. */
  @Test
  void aTabletInAPictureCalibratesAndIsReadBack() {
    Path file = strip().to(home.resolve("strip.tif"));
    List<PatchMeasure> measures = ReadPatches.ofFile(file, true, steps());
    StringBuilder seen = new StringBuilder();
    measures.forEach(
        one ->
            seen.append(one.patch().label())
                .append(',')
                .append(one.measured().mean())
                .append('\n'));
    wetside.densitometry().calibrate().by(wish(seen.toString(), "2026-01-10"));

    Calibration kept = flatbed().newest().orElseThrow();
    assertThat(kept.on()).isEqualTo(LocalDate.of(2026, 1, 10));
    assertThat(kept.scale().fits())
        .hasSize(SE_S21.length)
        .allSatisfy(step -> assertThat(step.residual().orElseThrow()).isCloseTo(0, within(0.004)));
    for (int i = 0; i < SE_S21.length; i++) {
      assertThat(measures.get(i).measured().mean()).isCloseTo(SE_S21[i][0], within(1 / 360.0));
    }
    PatchDensities read =
        wetside
            .densitometry()
            .convertPatches()
            .of(
                measures.stream().map(MeasuredPatch::of).toList(),
                new ConvertWish("flatbed", NegativeKind.SILVER, Optional.empty()));
    for (int i = 1; i < SE_S21.length - 1; i++) {
      assertThat(read.patches().get(i).density()).isInstanceOf(PatchDensity.Read.class);
      double density = ((PatchDensity.Read) read.patches().get(i).density()).density();
      assertThat(density).isCloseTo(SE_S21[i][1], within(0.004));
    }
  }

  @Test
  void theNewestCalibrationCountsAndItsDriftIsKnown() {
    wetside.densitometry().calibrate().by(wish(seenLines(1), "2026-01-03"));
    wetside.densitometry().calibrate().by(wish(seenLines(0.95), "2026-01-12"));
    wetside.close();
    wetside = Wetside.open(home, CLOCK);

    assertThat(flatbed().calibrations()).hasSize(2);
    assertThat(flatbed().newest().orElseThrow().on()).isEqualTo(LocalDate.of(2026, 1, 12));
    assertThat(flatbed().newest().orElseThrow().note()).isEqualTo("holder A");
    assertThat(flatbed().drift(0).orElseThrow().largest().orElseThrow()).isBetween(0.01, 0.04);
    assertThat(flatbed().drift(1)).isEmpty();
  }

  @Test
  void aTabletThatIsCorrectedLaterChangesNoEarlierCalibration() {
    wetside.densitometry().calibrate().by(wish(seenLines(1), "2026-01-03"));
    wetside
        .densitometry()
        .keepTablets()
        .put(new StepTablet("T12", "again", TabletLines.parse("1,0.10\n2,0.90\n")));

    assertThat(flatbed().newest().orElseThrow().steps().get(0).density().value()).isEqualTo(0.04);
    assertThat(wetside.densitometry().keepTablets().all()).hasSize(1);
  }

  @Test
  void netIsAboveTheBaseAndCutOffOrFlaringPatchesAreNotRead() {
    wetside.densitometry().calibrate().by(wish(seenLines(1), "2026-01-03"));
    PatchDensities read =
        wetside
            .densitometry()
            .convertPatches()
            .of(
                List.of(
                    new MeasuredPatch("Base", Means.ofGrey(29026.15), 0),
                    new MeasuredPatch("4", Means.ofGrey(8532.39), 0),
                    new MeasuredPatch("5", Means.ofGrey(8532.39), 0.02)),
                new ConvertWish("flatbed", NegativeKind.SILVER, Optional.empty()));

    assertThat(read.base().orElseThrow()).isCloseTo(0.24, within(0.005));
    assertThat(read.net(read.patches().get(1)).orElseThrow()).isCloseTo(0.39, within(0.01));
    assertThat(read.patches().get(2).density())
        .isEqualTo(
            new PatchDensity.NotRead(
                "2.0 % of its pixels are at 0 or 65535, where light is cut off"));
    PatchDensities flared =
        wetside
            .densitometry()
            .convertPatches()
            .of(
                List.of(new MeasuredPatch("11", Means.ofGrey(2626.01), 0)),
                new ConvertWish("flatbed", NegativeKind.SILVER, Optional.of(new Flare(0.2))));
    assertThat(flared.patches().get(0).density())
        .isEqualTo(new PatchDensity.NotRead("flare alone is brighter than this patch"));
  }

  /**
   * A flare put into a picture is found from the opaque patch, and what is behind it comes back.
   * The scanner is invented: 60000 times the transmission.
   */
  @Test
  void flareIsFoundFromAPatchThatLetsNoLightThrough() {
    wetside
        .densitometry()
        .keepTablets()
        .put(
            new StepTablet(
                "T5", "invented", TabletLines.parse("1,0.05\n2,0.60\n3,1.20\n4,1.80\n5,2.40\n")));
    StringBuilder seen = new StringBuilder();
    double[] tablet = {0.05, 0.60, 1.20, 1.80, 2.40};
    for (int i = 0; i < tablet.length; i++) {
      seen.append(i + 1).append(',').append(pixel(tablet[i], 0)).append('\n');
    }
    wetside
        .densitometry()
        .calibrate()
        .by(
            new Calibrate.Wish(
                "flatbed",
                "T5",
                LocalDate.parse("2026-01-10"),
                Calibration.Method.FORMULA,
                seen.toString(),
                ""));
    double base = 0.20;
    List<MeasuredPatch> patches =
        List.of(
            new MeasuredPatch("base", Means.ofGrey(pixel(base, 0)), 0),
            new MeasuredPatch("dark", Means.ofGrey(pixel(base, 1.20, 0.01)), 0),
            new MeasuredPatch("black", Means.ofGrey(pixel(base, 99, 0.01)), 0));

    PatchDensities found = converted(patches, Optional.of("Black"));

    assertThat(found.flare())
        .isEqualTo("Flare of 0.0100 of the surround's light is taken off, found from patch Black.");
    assertThat(found.base().orElseThrow()).isCloseTo(base, within(0.0005));
    assertThat(found.net(found.patches().get(1)).orElseThrow()).isCloseTo(1.20, within(0.002));
    assertThat(found.patches().get(2).density())
        .isEqualTo(new PatchDensity.NotRead("flare alone is brighter than this patch"));
    PatchDensities asSeen = converted(patches, Optional.empty());
    assertThat(asSeen.flare()).isEmpty();
    assertThat(asSeen.net(asSeen.patches().get(1)).orElseThrow()).isCloseTo(1.1404, within(0.002));

    PatchDensities none =
        converted(
            List.of(patches.get(0), new MeasuredPatch("black", Means.ofGrey(3), 0)),
            Optional.of("black"));
    assertThat(none.flare()).contains("flare is below 0.0064, and nothing is taken off");
    assertThatThrownBy(() -> converted(patches, Optional.of("card")))
        .hasMessageContaining("card")
        .hasMessageContaining("no patch of that label");
    assertThatThrownBy(() -> converted(patches, Optional.of("base")))
        .hasMessageContaining("more than 0.30 above the surround");
  }

  private PatchDensities converted(List<MeasuredPatch> patches, Optional<String> opaque) {
    return wetside
        .densitometry()
        .convertPatches()
        .of(patches, new ConvertWish("flatbed", NegativeKind.SILVER, Optional.empty(), opaque));
  }

  private static double pixel(double density, double flare) {
    return 60000 * (Math.pow(10, -density) + flare) / (1 + flare);
  }

  /** Seen within clear film of that base. */
  private static double pixel(double base, double net, double flare) {
    return pixel(base, 0) * (Math.pow(10, -net) + flare) / (1 + flare);
  }

  @Test
  void badCalibrationsAreRefusedEachInItsWordsAndNothingIsKept() {
    refused(wish("7;3466,13", "2026-01-03"), "line 1", "commas between cells");
    refused(wish("7,3466,13", "2026-01-03"), "line 1", "step and mean pixel");
    refused(wish("7,dark", "2026-01-03"), "pixel value of step 7", "a number");
    refused(wish("77,3466.1", "2026-01-03"), "\"77\"", "no step of that label");
    refused(wish("7,70000", "2026-01-03"), "line 1", "0 to 65535");
    refused(wish("", "2026-01-03"), "nothing", "write lines such as");
    refused(wish("1,53988\n2,39777\n3,29026", "2026-01-03"), "usable steps", "at least 4");
    refused(wish(seenLines(1), "2026-02-03"), "2026-02-03", "not after today");
    refused(
        new Calibrate.Wish(
            "camera", "T12", LocalDate.EPOCH, Calibration.Method.FORMULA, seenLines(1), ""),
        "camera",
        "none of that name");
    assertThat(flatbed().calibrations()).isEmpty();
    assertThatThrownBy(
            () ->
                wetside
                    .densitometry()
                    .convertPatches()
                    .of(
                        List.of(),
                        new ConvertWish("flatbed", NegativeKind.SILVER, Optional.empty())))
        .hasMessageContaining("calibrate it");
  }

  private void refused(Calibrate.Wish wish, String what, String why) {
    assertThatThrownBy(() -> wetside.densitometry().calibrate().by(wish))
        .as(what)
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining(what)
        .hasMessageContaining(why);
  }

  @Test
  void aPictureIsKeptOnlyWhenItCanBeMeasuredAndUnderAFreeName() throws IOException {
    KeepPictures pictures = wetside.densitometry().keepPictures();
    byte[] good = Files.readAllBytes(strip().to(home.resolve("x.tif")));
    byte[] eight = Files.readAllBytes(strip().bits(8).to(home.resolve("y.tif")));

    assertThat(pictures.take("C:\\scans\\strip.TIF", new ByteArrayInputStream(good)).name())
        .isEqualTo("strip.TIF");
    assertThatThrownBy(() -> pictures.take("eight.tif", new ByteArrayInputStream(eight)))
        .hasMessageContaining("eight.tif")
        .hasMessageContaining("8 bits");
    assertThatThrownBy(() -> pictures.take("strip.TIF", new ByteArrayInputStream(good)))
        .hasMessageContaining("one of that name");
    for (String name : List.of("strip.png", ".tif", "a".repeat(130) + ".tif")) {
      assertThatThrownBy(() -> pictures.take(name, new ByteArrayInputStream(good)))
          .hasMessageContaining("file name");
    }
    try (var files = Files.list(home.resolve("pictures"))) {
      assertThat(files).hasSize(1);
    }
    assertThat(pictures.find("../wetside.db")).isEmpty();
    assertThat(pictures.remove("strip.TIF")).isTrue();
    assertThat(pictures.all()).isEmpty();
  }

  @Test
  void aDeclarationHoldsForThatVeryFileAndPatchesAreRemembered() throws IOException {
    Path file = home.resolve("pictures/strip.tif");
    Files.createDirectories(file.getParent());
    strip().to(file);
    KeepPictures pictures = wetside.densitometry().keepPictures();

    assertThat(pictures.find("strip.tif").orElseThrow().wantsDeclaration()).isTrue();
    assertThatThrownBy(() -> wetside.densitometry().readPatches().of("strip.tif", steps()))
        .hasMessageContaining("says nothing");
    assertThat(pictures.find("strip.tif").orElseThrow().patches()).isEqualTo(steps());
    pictures.declare("strip.tif", true);
    assertThat(wetside.densitometry().readPatches().of("strip.tif", steps())).hasSize(12);
    assertThat(pictures.find("strip.tif").orElseThrow().patches()).isEqualTo(steps());

    new TiffFile(241, 30).to(file);
    assertThat(pictures.find("strip.tif").orElseThrow().wantsDeclaration()).isTrue();
    assertThat(pictures.find("strip.tif").orElseThrow().patches()).isEmpty();
  }

  @Test
  void badRectanglesAreNamedByTheirLines() {
    List<String> lines = new ArrayList<>();
    lines.add("label,x,y,width,height");
    lines.add("1,10,10,20");
    lines.add("2,10,ten,20,20");
    lines.add("3,10,1.5,20,20");
    assertThatThrownBy(() -> PatchLines.parse(String.join("\n", lines)))
        .hasMessageContaining("3 bad lines")
        .hasMessageContaining("line 2")
        .hasMessageContaining("five cells")
        .hasMessageContaining("line 3")
        .hasMessageContaining("whole number of pixels")
        .hasMessageContaining("line 4");
    assertThatThrownBy(() -> PatchLines.parse("1,1,1,9,9\n1,2,2,9,9"))
        .hasMessageContaining("each label once");
    assertThat(PatchLines.parse(PatchLines.text(steps()))).isEqualTo(steps());
  }
}
