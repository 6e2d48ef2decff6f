package org.wetside.core.sensitometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Fits {@link Saturation} to contrast against time, and refuses where it does not belong. */
final class SaturationFitter {
  private static final int FEWEST_POINTS = 4;
  private static final double STANDARD_ERRORS = 2;
  private static final double FURTHEST_LIMIT = 3;
  private static final double SECONDS_PER_MINUTE = 60;

  private final double[] minutes;
  private final double[] contrast;

  SaturationFitter(List<ContrastPoint> points) {
    minutes = points.stream().mapToDouble(p -> p.seconds() / SECONDS_PER_MINUTE).toArray();
    contrast = points.stream().mapToDouble(ContrastPoint::contrast).toArray();
  }

  ContrastDescription describe() {
    long times = Arrays.stream(minutes).distinct().count();
    if (times < FEWEST_POINTS) {
      return refused(
          "it has three unknowns and wants four different times or more; there are " + times);
    }
    if (!bendsDown()) {
      return refused(
          "the points do not bend down: the curvature of a quadratic through them is not negative"
              + " by two standard errors");
    }
    LeastSquares squares = new LeastSquares(new SaturationModel(), minutes, contrast);
    LeastSquaresFit fit = squares.polishedFrom(start());
    if (!fit.converged()) {
      return refused("the search for its parameters did not come to rest");
    }
    return judged(fit, squares.standardErrors(fit));
  }

  private ContrastDescription judged(LeastSquaresFit fit, double[] errors) {
    if (errors.length == 0) {
      return refused("the points do not determine its parameters: their covariance is singular");
    }
    Saturation found =
        new Saturation(fit.parameters()[0], fit.parameters()[1], fit.parameters()[2]);
    double most = Arrays.stream(contrast).max().orElseThrow();
    if (!(found.limit() > 0) || found.limit() > FURTHEST_LIMIT * most) {
      return refused(
          String.format(
              Locale.ROOT,
              "its limit of %.2f lies beyond three times the largest contrast measured, %.2f",
              found.limit(),
              most));
    }
    List<String> warnings = new ArrayList<>();
    if (found.delayMinutes() < -STANDARD_ERRORS * errors[2]) {
      warnings.add(
          String.format(
              Locale.ROOT,
              "contrast would begin %.1f min before the developer is poured",
              -found.delayMinutes()));
    }
    return new ContrastDescription.Described(
        found,
        new Saturation(errors[0], errors[1], errors[2]),
        Math.sqrt(fit.squares() / (minutes.length - 3)),
        warnings);
  }

  private static ContrastDescription refused(String reason) {
    return new ContrastDescription.Refused(reason);
  }

  /** Least-squares quadratic in time: is its curvature negative by two standard errors? */
  private boolean bendsDown() {
    double middle = Arrays.stream(minutes).average().orElseThrow();
    FitModel quadratic = new QuadraticModel(middle);
    LeastSquares squares = new LeastSquares(quadratic, minutes, contrast);
    LeastSquaresFit fit = squares.polishedFrom(new double[] {0, 0, 0});
    double[] errors = squares.standardErrors(fit);
    return fit.converged()
        && errors.length == 3
        && fit.parameters()[2] < -STANDARD_ERRORS * errors[2];
  }

  /** As if the curve went from nothing to the largest contrast, five sixths of its limit. */
  private double[] start() {
    double most = Arrays.stream(contrast).max().orElseThrow();
    double longest = Arrays.stream(minutes).max().orElseThrow();
    double limit = 1.2 * most;
    return new double[] {limit, -Math.log1p(-most / limit) / longest, 0};
  }
}
