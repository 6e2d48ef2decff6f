package org.wetside.app.density;

import java.util.List;
import java.util.Set;
import org.wetside.core.instrument.InstrumentKind;
import org.wetside.core.instrument.Means;
import org.wetside.core.instrument.Seen;
import org.wetside.core.instrument.SeenDensity;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.OpticalDensity;

/**
 * What an instrument made of steps or patches, as lines: {@code step,density} for a densitometer,
 * {@code step,grey} or {@code step,red,green,blue} for a scanner or camera.
 */
public final class SeenLines {
  private static final int GREY = 2;
  private static final int COLOURS = 4;

  private SeenLines() {}

  /**
   * One line.
   *
   * @param label the step or patch
   * @param seen what the instrument made of it
   */
  public record Line(String label, Seen seen) {}

  /**
   * Reads them whole or not at all.
   *
   * @throws BadValueException naming every bad line
   */
  public static List<Line> parse(String text, InstrumentKind kind) {
    return new Lines("steps seen", Set.of("step,density", "step,grey", "step,red,green,blue"))
        .read(text, cells -> line(cells, kind));
  }

  private static Line line(String[] cells, InstrumentKind kind) {
    String label = cells[0].strip();
    if (!kind.seesPixels()) {
      if (cells.length != 2) {
        throw wrong(cells, "two cells, step and density, for example 7,0.94");
      }
      return new Line(
          label,
          new SeenDensity(
              OpticalDensity.of(
                  TypedNumber.decimal("density seen at step " + label, cells[1], "0.94"))));
    }
    return switch (cells.length) {
      case GREY -> new Line(label, Means.ofGrey(pixel(cells, 1)));
      case COLOURS ->
          new Line(label, Means.ofColours(pixel(cells, 1), pixel(cells, 2), pixel(cells, 3)));
      default ->
          throw wrong(
              cells,
              "step and mean pixel, for example 7,3466.1, or step and the means of red, green and"
                  + " blue");
    };
  }

  private static double pixel(String[] cells, int at) {
    return TypedNumber.decimal("pixel value of step " + cells[0].strip(), cells[at], "3466.1");
  }

  private static BadValueException wrong(String[] cells, String limit) {
    return new BadValueException(
        "step", String.join(",", cells), limit + " (decimal mark: a point)");
  }
}
