package org.wetside.app.curves;

import java.util.List;
import java.util.Locale;
import org.wetside.app.NoAnswerException;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Gradient;
import org.wetside.core.sensitometry.ContrastCurve;
import org.wetside.core.sensitometry.ContrastDescription;
import org.wetside.core.sensitometry.ContrastPoint;
import org.wetside.core.sensitometry.ContrastTime;

/** How long to develop for a wanted contrast, from contrast against time. */
public final class FindContrastTime {
  /** Draws are made with it, so that an answer can be repeated. */
  public static final long SEED = 1;

  private static final double SECONDS_PER_MINUTE = 60;

  /**
   * What follows.
   *
   * @param aim contrast wanted
   * @param time with its band
   * @param description whether an exponential goes through the points
   * @param moved points that had to be moved because contrast fell, as they were read
   */
  public record Answer(
      Gradient aim,
      ContrastTime time,
      ContrastDescription description,
      List<ContrastPoint> moved) {}

  /**
   * Reads the series backwards.
   *
   * @throws BadValueException with fewer than two different times, or contrast that does not rise
   * @throws NoAnswerException when the aim lies beyond the series
   */
  public Answer answer(List<ContrastPoint> points, Gradient aim) {
    long times = points.stream().map(ContrastPoint::seconds).distinct().count();
    if (times < 2) {
      throw new BadValueException(
          "series", times + " different times", "it wants two or more to read between them");
    }
    ContrastCurve curve = ContrastCurve.through(points);
    if (!(curve.mostContrast() > curve.leastContrast())) {
      throw new BadValueException(
          "series",
          String.format(Locale.ROOT, "contrast %.2f after every time", curve.leastContrast()),
          "contrast must rise with time");
    }
    ContrastTime time =
        ContrastTime.of(points, aim.value(), SEED)
            .orElseThrow(() -> new NoAnswerException(beyond(curve, aim.value())));
    return new Answer(aim, time, ContrastDescription.of(points), curve.moved());
  }

  private static String beyond(ContrastCurve curve, double aim) {
    return String.format(
        Locale.ROOT,
        "contrast %.2f lies beyond the series, which goes from %.2f after %.1f min to %.2f after"
            + " %.1f min; nothing is read beyond it. Develop a clip for a %s time and add what it"
            + " shows",
        aim,
        curve.leastContrast(),
        curve.firstSeconds() / SECONDS_PER_MINUTE,
        curve.mostContrast(),
        curve.lastSeconds() / SECONDS_PER_MINUTE,
        aim > curve.mostContrast() ? "longer" : "shorter");
  }
}
