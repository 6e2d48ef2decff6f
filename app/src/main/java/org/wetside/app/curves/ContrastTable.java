package org.wetside.app.curves;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.sensitometry.ContrastPoint;

/**
 * Contrast against time as a CSV text with the header {@code minutes,contrast}; minutes as {@code
 * 6.5} or {@code 6:30}.
 */
public final class ContrastTable {
  /** Standard deviation of the user's own contrast (model, section 2) [-]. */
  public static final double OWN_SD = 0.02;

  private static final double SECONDS_PER_MINUTE = 60;

  private ContrastTable() {}

  /**
   * Reads the text whole or not at all.
   *
   * @throws BadValueException naming every bad line
   */
  public static List<ContrastPoint> parse(String csv) {
    List<ContrastPoint> points = new ArrayList<>();
    new NumberTable("minutes", "contrast", "6.5,0.58")
        .read(
            csv,
            (minutes, contrast) ->
                points.add(
                    new ContrastPoint(
                        seconds(minutes),
                        NumberTable.number("contrast", contrast, "0.58"),
                        OWN_SD)));
    return points;
  }

  private static double seconds(String minutes) {
    if (minutes.indexOf(':') >= 0) {
      Duration time = TimeSpan.parse("development time", minutes);
      return TimeSpan.toSeconds(time);
    }
    return NumberTable.number("development time", minutes, "6.5") * SECONDS_PER_MINUTE;
  }
}
