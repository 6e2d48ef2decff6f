package org.wetside.core.sensitometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.wetside.core.quantity.TimeSpan;

/**
 * Curves of one film in one developer at several times: contrast and speed against time, and the
 * times for N − 2 to N + 2.
 *
 * @param curves by rising time
 */
public record CurveFamily(List<DevelopedCurve> curves) {
  /** Standard deviation of a contrast whose curve has no band (model, section 2). */
  private static final double USUAL_SD = 0.02;

  private static final int FURTHEST_N = 2;

  public CurveFamily {
    curves = curves.stream().sorted(Comparator.comparing(DevelopedCurve::time)).toList();
  }

  /** Contrast against time; curves whose contrast is not determinable are left out. */
  public List<ContrastPoint> contrast(Measure measure) {
    List<ContrastPoint> points = new ArrayList<>();
    for (DevelopedCurve curve : curves) {
      CurveResult result = curve.results().get(measure);
      result
          .value()
          .ifPresent(
              value ->
                  points.add(
                      new ContrastPoint(
                          TimeSpan.toSeconds(curve.time()),
                          value,
                          result.band().map(Interval::sd).orElse(USUAL_SD))));
    }
    return points;
  }

  /** Speed against time. */
  public List<SpeedAtTime> speed() {
    return curves.stream()
        .map(
            curve ->
                new SpeedAtTime(
                    curve.time(),
                    curve.results().get(Measure.EXPOSURE_INDEX),
                    curve.results().get(Measure.SPEED_DELTA_X)))
        .toList();
  }

  /**
   * Times for N − 2 to N + 2, in that order; never beyond the family.
   *
   * @param seed of the bands
   */
  public List<TimeForN> times(PrintAim aim, long seed) {
    List<ContrastPoint> points = contrast(aim.measure());
    boolean enough = points.stream().map(ContrastPoint::seconds).distinct().count() >= 2;
    List<TimeForN> times = new ArrayList<>();
    for (int n = -FURTHEST_N; n <= FURTHEST_N; n++) {
      double gradient = aim.gradient(n);
      times.add(
          new TimeForN(
              n,
              gradient,
              enough ? ContrastTime.of(points, gradient, seed) : java.util.Optional.empty()));
    }
    return times;
  }
}
