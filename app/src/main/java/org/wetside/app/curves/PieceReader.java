package org.wetside.app.curves;

import java.time.Duration;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetside.app.density.Densitometry;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.Units;
import org.wetside.core.strip.FilmStrip;
import org.wetside.core.strip.StepLight;
import org.wetside.core.testroll.KeptTestRoll;
import org.wetside.core.testroll.PieceDeveloped;
import org.wetside.core.testroll.PlannedFrame;
import org.wetside.core.testroll.TestRoll;
import org.wetside.core.testroll.TypedReading;

/**
 * Turns what was typed for the frames of a test roll's piece into its strip, or names all that is
 * wrong.
 */
public final class PieceReader {
  /** The field of what concerns no single frame. */
  public static final String WHOLE = "";

  private static final String HEADER = "stops,density\n";

  private final Densitometry densitometry;
  private final Map<String, String> problems = new LinkedHashMap<>();

  /**
   * @param densitometry instruments that may be named
   */
  public PieceReader(Densitometry densitometry) {
    this.densitometry = densitometry;
  }

  /** What is wrong, by the frame's number as text, or by {@link #WHOLE}. */
  public Map<String, String> problems() {
    return Map.copyOf(problems);
  }

  /**
   * The strip; empty when anything stands in the way. A frame for which nothing was typed is left
   * out; the blank gives base plus fog, the mean where it was read twice.
   *
   * @param instrument name of what read the densities; empty when nobody said
   */
  public Optional<FilmStrip> read(KeptTestRoll kept, int piece, String instrument) {
    problems.clear();
    PieceDeveloped developed = kept.developed().get(piece);
    if (developed == null) {
      problems.put(
          WHOLE, "Say first how long piece " + piece + " was developed: its step is not ticked.");
      return Optional.empty();
    }
    StringBuilder lines = new StringBuilder(HEADER);
    StringBuilder blank = new StringBuilder();
    for (PlannedFrame frame : kept.framesToRead(piece)) {
      TypedReading typed = kept.typedFor(frame.frame());
      Stream.of(typed.first(), typed.second())
          .filter(density -> !density.isEmpty())
          .filter(density -> isNumber(frame, density))
          .forEach(
              density -> {
                if (frame.step() == null) {
                  blank.append(density).append(' ');
                } else {
                  lines.append(Math.round(frame.step().stops().count()));
                  lines.append(',').append(density).append('\n');
                }
              });
    }
    if (problems.isEmpty() && lines.length() == HEADER.length()) {
      problems.put(WHOLE, "No density is typed for an exposed frame of piece " + piece + " yet.");
    }
    if (problems.isEmpty() && blank.isEmpty()) {
      int frame = kept.roll().plan().pieces().blankFrame(piece);
      problems.put(
          String.valueOf(frame),
          "No density is typed for frame " + frame + ", the blank: it gives base plus fog.");
    }
    return problems.isEmpty()
        ? strip(kept, piece, developed, lines.toString(), mean(blank.toString()), instrument)
        : Optional.empty();
  }

  private Optional<FilmStrip> strip(
      KeptTestRoll kept,
      int piece,
      PieceDeveloped developed,
      String lines,
      String baseFog,
      String instrument) {
    TestRoll roll = kept.roll();
    StripReader reader = new StripReader(Units.METRIC, densitometry);
    Optional<FilmStrip> strip =
        reader.read(
            new StripDraft(
                roll.film(),
                roll.developer(),
                roll.dilution().label(),
                clock(developed.time()),
                developed.temperature().map(warm -> plain(warm.celsius())).orElse(""),
                roll.vessel().word(),
                developed.day().toString(),
                StepLight.CAMERA.word(),
                "stops",
                lines,
                "",
                "",
                roll.index().map(ExposureIndex::isoArithmetic).map(PieceReader::plain).orElse(""),
                baseFog,
                "test roll " + kept.id() + ", piece " + piece,
                "",
                instrument,
                ""));
    if (!reader.problems().isEmpty()) {
      problems.put(WHOLE, String.join("; ", reader.problems().values()));
    }
    return strip;
  }

  /** A density is asked for frame by frame, so that the message stands beside it. */
  private boolean isNumber(PlannedFrame frame, String density) {
    if (density.matches("\\d+(\\.\\d+)?|\\.\\d+")) {
      return true;
    }
    problems.put(
        String.valueOf(frame.frame()),
        "density of frame "
            + frame.frame()
            + " \""
            + density
            + "\": "
            + (density.matches("\\d*,\\d+")
                ? "its decimal mark is a comma; write a point, as in 0.35"
                : "it must be a number, as in 0.35"));
    return false;
  }

  /** As it would be typed, to the millisecond. */
  private static String clock(Duration time) {
    return String.format(
        Locale.ROOT, "%d:%02d.%03d", time.toMinutes(), time.toSecondsPart(), time.toMillisPart());
  }

  private static String mean(String blank) {
    double[] read =
        Stream.of(blank.split(" ", -1))
            .filter(one -> !one.isEmpty())
            .mapToDouble(Double::parseDouble)
            .toArray();
    return read.length == 0 ? "" : plain(Arrays.stream(read).average().orElseThrow());
  }

  private static String plain(double value) {
    return String.format(Locale.ROOT, "%.6f", value).replaceFirst("\\.?0+$", "");
  }
}
