package org.wetside.core.sensitometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Bands of 90 % by resampling: the secondary fit plus residuals drawn from it (or normal errors of
 * the readings' own scatter), read by the primary method a thousand times. What they miss the value
 * of the secondary fit itself by, reflected about the primary estimate, is the band.
 */
final class Bands {
  static final int RESAMPLES = 1000;

  /** Fewer steps leave too few residuals to draw from. */
  static final int FEWEST_STEPS = 12;

  private static final double TAIL = 0.05;
  private static final int GRID = 200;

  /** A band of what could not be read in more resamples than this would be made up. */
  private static final double MOST_MISSING = 0.05;

  private final Steps steps;
  private final BaseFog baseFog;
  private final double densityStep;
  private final SecondaryFit fit;
  private final double[] residuals;

  Bands(Steps steps, BaseFog baseFog, double densityStep, SecondaryFit fit) {
    this.steps = steps;
    this.baseFog = baseFog;
    this.densityStep = densityStep;
    this.fit = fit;
    this.residuals = residuals(steps, fit);
  }

  /** A band for each measure in order, empty where there is none. */
  List<Optional<Interval>> about(double[] primary, long seed) {
    double[][] drawn = new double[primary.length][RESAMPLES];
    SplittableRandom random = new SplittableRandom(seed);
    double[] fitted = fit.fitted();
    double[] behind = ofTheFit(baseFog.in(fitted));
    for (int draw = 0; draw < RESAMPLES; draw++) {
      double[] density = resample(fitted, random);
      double[] pooled = MonotoneRepair.of(density, steps.count());
      double[] read =
          CurveReader.read(
              MonotoneCubic.through(steps.logH(), pooled),
              steps.logH(),
              pooled,
              baseFog.in(density));
      for (int i = 0; i < read.length; i++) {
        drawn[i][draw] = read[i];
      }
    }
    List<Optional<Interval>> bands = new ArrayList<>();
    for (int i = 0; i < primary.length; i++) {
      bands.add(reflected(primary[i], behind[i], drawn[i]));
    }
    return bands;
  }

  /** The band of the curve itself at each of its steps, by rising exposure. */
  List<BandPoint> along(double[] primary, long seed) {
    double[][] drawn = new double[primary.length][RESAMPLES];
    SplittableRandom random = new SplittableRandom(seed);
    double[] fitted = fit.fitted();
    for (int draw = 0; draw < RESAMPLES; draw++) {
      double[] pooled = MonotoneRepair.of(resample(fitted, random), steps.count());
      for (int i = 0; i < pooled.length; i++) {
        drawn[i][draw] = pooled[i];
      }
    }
    List<BandPoint> band = new ArrayList<>();
    for (int i = 0; i < primary.length; i++) {
      double logH = steps.logH()[i];
      reflected(primary[i], fitted[i], drawn[i])
          .ifPresent(around -> band.add(new BandPoint(logH, around)));
    }
    return band;
  }

  private double[] resample(double[] fitted, SplittableRandom random) {
    double[] density = fitted.clone();
    boolean own = !Double.isNaN(steps.ownSd());
    double floor = densityStep / Math.sqrt(12);
    for (int i = 0; i < density.length; i++) {
      if (own) {
        double sd = Math.max(steps.ownSd(), floor);
        density[i] += sd * random.nextGaussian() / Math.sqrt(steps.count()[i]);
      } else if (spread(residuals) < floor) {
        density[i] += densityStep * (random.nextDouble() - 0.5);
      } else {
        density[i] += residuals[random.nextInt(residuals.length)];
      }
    }
    return density;
  }

  private static double spread(double[] centred) {
    double squares = 0;
    for (double one : centred) {
      squares += one * one;
    }
    return Math.sqrt(squares / centred.length);
  }

  /** What the resamples are drawn about: the formula itself, read on a fine grid. */
  private double[] ofTheFit(double baseFogOfFit) {
    double first = steps.logH()[0];
    double last = steps.logH()[steps.size() - 1];
    SoftplusShape shape = fit.shape();
    double[] logH = new double[GRID + 1];
    double[] density = new double[GRID + 1];
    for (int i = 0; i <= GRID; i++) {
      logH[i] = first + (last - first) * i / GRID;
      density[i] = shape.densityAt(logH[i]);
    }
    double[] risen = MonotoneRepair.of(density, ones(density.length));
    return CurveReader.read(MonotoneCubic.through(logH, risen), logH, risen, baseFogOfFit);
  }

  private static double[] ones(int n) {
    double[] ones = new double[n];
    Arrays.fill(ones, 1);
    return ones;
  }

  private static Optional<Interval> reflected(double primary, double behind, double[] drawn) {
    if (Double.isNaN(primary) || Double.isNaN(behind)) {
      return Optional.empty();
    }
    double[] sorted = drawn.clone();
    Arrays.sort(sorted); // NaN comes last
    int read = sorted.length;
    while (read > 0 && Double.isNaN(sorted[read - 1])) {
      read--;
    }
    if (read < (1 - MOST_MISSING) * sorted.length) {
      return Optional.empty();
    }
    double low = sorted[(int) (TAIL * read)];
    double high = sorted[(int) Math.ceil((1 - TAIL) * read) - 1];
    return Optional.of(new Interval(primary + behind - high, primary + behind - low));
  }

  /** Centred, and widened for what the parameters took up. */
  private static double[] residuals(Steps steps, SecondaryFit fit) {
    double[] fitted = fit.fitted();
    int n = fitted.length;
    double[] left = new double[n];
    double mean = 0;
    for (int i = 0; i < n; i++) {
      left[i] = steps.density()[i] - fitted[i];
      mean += left[i] / n;
    }
    double wider = Math.sqrt((double) n / (n - fit.parameterCount()));
    for (int i = 0; i < n; i++) {
      left[i] = (left[i] - mean) * wider;
    }
    return left;
  }
}
