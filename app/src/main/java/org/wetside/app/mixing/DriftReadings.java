package org.wetside.app.mixing;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.thermal.TimedReading;

/**
 * Readings of one bath as a CSV text with a header {@code elapsed,temp}: how long after the first
 * reading (as {@code 12:30}, {@code 90s} or {@code 25min}) and the corrected temperature with its
 * unit (as {@code 20.4C}).
 */
public final class DriftReadings {
  private static final String HEADER = "elapsed,temp";

  private DriftReadings() {}

  /**
   * Reads the text whole or not at all.
   *
   * @throws BadValueException naming every bad line
   */
  public static List<TimedReading> parse(String csv) {
    List<String> lines = csv.replace("\uFEFF", "").lines().toList();
    if (lines.isEmpty() || !lines.get(0).replace(" ", "").equalsIgnoreCase(HEADER)) {
      throw new BadValueException(
          "first line of the readings",
          lines.isEmpty() ? "nothing" : lines.get(0),
          "it must be the header " + HEADER);
    }
    List<TimedReading> readings = new ArrayList<>();
    List<String> wrong = new ArrayList<>();
    for (int i = 1; i < lines.size(); i++) {
      String line = lines.get(i).strip();
      if (line.isEmpty() || line.startsWith("#")) {
        continue;
      }
      try {
        readings.add(reading(line));
      } catch (BadValueException refused) {
        wrong.add("line " + (i + 1) + ": " + refused.getMessage());
      }
    }
    if (!wrong.isEmpty()) {
      throw new BadValueException(
          "readings", wrong.size() + " bad of " + (lines.size() - 1), String.join("; ", wrong));
    }
    return readings;
  }

  private static TimedReading reading(String line) {
    String[] cells = line.split(",", -1);
    if (cells.length != 2) {
      throw new BadValueException(
          "reading", line, "write two cells, for example 10:00,19.6C (decimal mark: a point)");
    }
    Duration elapsed = TimeSpan.parse("elapsed time", cells[0]);
    return new TimedReading(elapsed, Temperature.parse(cells[1]));
  }
}
