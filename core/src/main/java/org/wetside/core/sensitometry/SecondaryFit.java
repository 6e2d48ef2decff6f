package org.wetside.core.sensitometry;

import java.util.Optional;

/**
 * A {@link SoftplusShape} through the averaged readings by least squares: what outliers stand out
 * from and what resamples are drawn about. Results are not read from it.
 */
public final class SecondaryFit {
  private static final double TIGHT = 1e-12;
  private static final int MOST_EVALUATIONS = 400;
  private static final double USUAL_WIDTH = 0.15;

  private final double[] logH;
  private final double[] parameters;
  private final double residualSquares;

  private SecondaryFit(double[] logH, double[] parameters, double residualSquares) {
    this.logH = logH;
    this.parameters = parameters;
    this.residualSquares = residualSquares;
  }

  /**
   * Fits densities by rising log exposure: without a shoulder, and with one, which stays when it
   * lowers the residual variance. The shoulder is looked for from two starts, since from the fit
   * without one the search can rest in a valley that is not the deepest.
   *
   * @return empty when there are too few steps for it or no search came to rest
   */
  static Optional<SecondaryFit> of(double[] logH, double[] density) {
    if (logH.length <= SoftplusModel.WITH_SHOULDER) {
      return Optional.empty();
    }
    LeastSquares squares = new LeastSquares(new SoftplusModel(), logH, density);
    double[] start = start(logH, density);
    LeastSquaresFit plain = squares.from(start, TIGHT, MOST_EVALUATIONS);
    LeastSquaresFit bent =
        deeper(
            squares.from(withShoulder(plain.parameters(), logH), TIGHT, MOST_EVALUATIONS),
            squares.from(withShoulder(start, logH), TIGHT, MOST_EVALUATIONS));
    double plainVariance = variance(plain, logH.length, SoftplusModel.WITHOUT_SHOULDER);
    double bentVariance = variance(bent, logH.length, SoftplusModel.WITH_SHOULDER);
    LeastSquaresFit better = bentVariance < plainVariance ? bent : plain;
    return better.converged()
        ? Optional.of(new SecondaryFit(logH, better.parameters(), better.squares()))
        : Optional.empty();
  }

  /** The formula found. */
  public SoftplusShape shape() {
    return SoftplusModel.shape(parameters);
  }

  /** How many parameters were fitted: 6 with a shoulder, 4 without. */
  public int parameterCount() {
    return parameters.length;
  }

  /** Standard deviation of what is left of the readings, √(RSS/(n − p)) [-]. */
  public double residualSd() {
    return Math.sqrt(residualSquares / (logH.length - parameters.length));
  }

  /**
   * The same formula through other densities at the same exposures, begun from this fit. No answer
   * rests on it: bands are read from the steps of a resample, not from its smooth curve.
   *
   * @param density one for each exposure, in the order of this fit
   * @return empty when the search did not come to rest
   */
  public Optional<SecondaryFit> again(double[] density) {
    LeastSquaresFit fit =
        new NearbyFit(new SoftplusModel(), logH, parameters.length).from(parameters, density);
    return found(fit);
  }

  /**
   * The same formula through other densities by the library's fitter, begun from what they show and
   * nothing else, in one search: what {@link #again} is compared with.
   *
   * @param density one for each exposure, in the order of this fit
   * @return empty when the search did not come to rest
   */
  public Optional<SecondaryFit> afresh(double[] density) {
    double[] start = start(logH, density);
    return found(
        new LeastSquares(new SoftplusModel(), logH, density)
            .from(
                parameters.length == SoftplusModel.WITH_SHOULDER
                    ? withShoulder(start, logH)
                    : start,
                TIGHT,
                MOST_EVALUATIONS));
  }

  private Optional<SecondaryFit> found(LeastSquaresFit fit) {
    return fit.converged()
        ? Optional.of(new SecondaryFit(logH, fit.parameters(), fit.squares()))
        : Optional.empty();
  }

  /** Densities of the formula at the exposures of the readings [-]. */
  public double[] fitted() {
    SoftplusShape shape = shape();
    double[] fitted = new double[logH.length];
    for (int i = 0; i < fitted.length; i++) {
      fitted[i] = shape.densityAt(logH[i]);
    }
    return fitted;
  }

  private static LeastSquaresFit deeper(LeastSquaresFit one, LeastSquaresFit other) {
    return variance(other, 1, 0) < variance(one, 1, 0) ? other : one;
  }

  private static double variance(LeastSquaresFit fit, int n, int p) {
    return fit.converged() ? fit.squares() / (n - p) : Double.POSITIVE_INFINITY;
  }

  /** Base from the least density; slope and toe from the steepest stretch over three steps. */
  private static double[] start(double[] logH, double[] density) {
    double base = density[0];
    double steepest = 0;
    double meets = logH[0];
    for (int i = 0; i + 2 < logH.length; i++) {
      double slope = (density[i + 2] - density[i]) / (logH[i + 2] - logH[i]);
      base = Math.min(base, density[i]);
      if (slope > steepest) {
        steepest = slope;
        meets = logH[i + 1] - (density[i + 1] - base) / slope;
      }
    }
    return new double[] {base, steepest, meets, Math.log(USUAL_WIDTH)};
  }

  private static double[] withShoulder(double[] plain, double[] logH) {
    return new double[] {
      plain[0], plain[1], plain[2], plain[3], logH[logH.length - 1], Math.log(USUAL_WIDTH)
    };
  }
}
