package org.wetside.app.curves;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.OpticalDensity;
import org.wetside.core.strip.StepScale;
import org.wetside.core.strip.StripReading;

/**
 * Densities as they are typed, pasted from a sheet of figures, or read from a CSV file: two numbers
 * a line, parted by a comma, a tab or blanks; with or without the header {@code logH,density},
 * {@code step,density} or {@code stops,density}.
 *
 * @param column what the places are: {@code logH}, {@code step} or {@code stops}
 * @param readings in the order of the lines
 * @param densityStep to what the densities are rounded, by the digits they are written with [-]
 */
record PlaceTable(String column, List<StripReading> readings, double densityStep) {
  private static final double COARSEST = 0.1;
  private static final List<String> COLUMNS =
      List.of(
          StepScale.LogExposures.COLUMN,
          StepScale.TabletSteps.COLUMN,
          StepScale.CameraStops.COLUMN);

  PlaceTable {
    readings = List.copyOf(readings);
  }

  /**
   * Reads the text whole or not at all.
   *
   * @param chosen column of places where no header says it
   * @throws BadValueException naming every bad line
   */
  static PlaceTable parse(String text, String chosen) {
    List<String> lines =
        text.replace("\uFEFF", "").lines().map(PlaceTable::partedByCommas).toList();
    boolean headed = !lines.isEmpty() && lines.get(0).matches("[A-Za-z].*");
    String column = headed ? column(lines.get(0)) : chosen;
    List<StripReading> readings = new ArrayList<>();
    int[] decimals = {0};
    String example = column.equals(StepScale.LogExposures.COLUMN) ? "-2.40" : "3";
    new NumberTable(column, "density", example + ",0.35")
        .rows(
            headed ? lines.subList(1, lines.size()) : lines,
            headed ? 2 : 1,
            (place, density) -> {
              readings.add(
                  new StripReading(
                      NumberTable.number(words(column), place, example),
                      OpticalDensity.of(NumberTable.number("density", density, "0.35"))));
              decimals[0] = Math.max(decimals[0], NumberTable.decimals(density));
            });
    return new PlaceTable(column, readings, Math.min(COARSEST, Math.pow(10, -decimals[0])));
  }

  /** Blanks and tabs part as well as commas do, unless a comma stands in a number. */
  private static String partedByCommas(String typed) {
    String line = typed.strip();
    if (line.startsWith("#") || line.matches("\\S*") || line.indexOf(';') >= 0) {
      return line;
    }
    if (line.matches("\\S+\\s*,\\s*\\S+")) {
      return line.replaceAll("\\s", "");
    }
    return line.replaceAll("\\s+", line.indexOf(',') >= 0 ? ";" : ",");
  }

  private static String column(String header) {
    String bare = header.replace(";", ",").toLowerCase(Locale.ROOT);
    return COLUMNS.stream()
        .filter(column -> bare.equals(column.toLowerCase(Locale.ROOT) + ",density"))
        .findFirst()
        .orElseThrow(
            () ->
                new BadValueException(
                    "first line of the table",
                    header,
                    "a header is logH,density or step,density or stops,density; it may be left"
                        + " out"));
  }

  private static String words(String column) {
    return column.equals(StepScale.LogExposures.COLUMN) ? "log exposure" : column;
  }
}
