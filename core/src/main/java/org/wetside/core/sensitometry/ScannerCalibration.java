package org.wetside.core.sensitometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.wetside.core.quantity.BadValueException;

/**
 * A scanner or camera as densitometer, by a step tablet with densities of its own. Nothing is read
 * beyond the densest usable step, nor clearer than the clearest.
 *
 * <p>No more is claimed than ±0.03 of net density below 1.5 and ±0.1 of log H in speed (SE-S21,
 * S22, S23).
 */
public final class ScannerCalibration {
  /** What a net density below {@link #CLAIMED_BELOW} may be off. */
  public static final double CLAIM_DENSITY = 0.03;

  /** Net density up to which anything is claimed. */
  public static final double CLAIMED_BELOW = 1.5;

  /** What a log exposure of the speed point may be off, log10. */
  public static final double CLAIM_LOG10 = 0.1;

  private static final int FEWEST_FOR_FORMULA = 4;
  private static final int FEWEST_FOR_TABLE = 10;
  private static final int COMPARED = 50;

  private final double[] densities;
  private final double[] pixels;
  private final PixelScale scale;

  private ScannerCalibration(double[] densities, double[] pixels, PixelScale scale) {
    this.densities = densities;
    this.pixels = pixels;
    this.scale = scale;
  }

  /**
   * By the formula P = dark + gain·10^(−exponent·D), least squares on relative residuals.
   *
   * @throws BadValueException with fewer than four usable steps, or when no such formula fits
   */
  public static ScannerCalibration byFormula(List<TabletPatch> patches) {
    List<TabletPatch> usable = usable(patches, FEWEST_FOR_FORMULA);
    double[] densities = densities(usable);
    double[] pixels = pixels(usable);
    double[] places = new double[usable.size()];
    double[] ones = new double[usable.size()];
    for (int i = 0; i < places.length; i++) {
      places[i] = i;
      ones[i] = 1;
    }
    double span = densities[densities.length - 1] - densities[0];
    double start = Math.log10(pixels[0] / pixels[pixels.length - 1]) / span;
    LeastSquaresFit fit =
        new LeastSquares(new ScannerModel(densities, pixels), places, ones)
            .polishedFrom(new double[] {0, pixels[0] * Math.pow(10, start * densities[0]), start});
    double[] found = fit.parameters();
    boolean sound =
        fit.converged() && found[1] > 0 && found[2] > 0 && found[0] < pixels[pixels.length - 1];
    if (!sound) {
      throw new BadValueException(
          "tablet",
          usable.size() + " steps",
          "its pixels do not follow dark + gain·10^(−exponent·D): look at the densities entered");
    }
    return new ScannerCalibration(
        densities, pixels, new PixelScale.Formula(found[0], found[1], found[2]));
  }

  /**
   * By a monotone table through the steps themselves.
   *
   * @throws BadValueException with fewer than ten usable steps
   */
  public static ScannerCalibration byTable(List<TabletPatch> patches) {
    List<TabletPatch> usable = usable(patches, FEWEST_FOR_TABLE);
    double[] densities = densities(usable);
    double[] pixels = pixels(usable);
    return new ScannerCalibration(densities, pixels, new PixelScale.Table(densities, pixels));
  }

  /**
   * Density of a pixel [-]; empty beyond the usable steps.
   *
   * @param negative what kind of film it is
   * @throws BadValueException for a stained or a colour negative
   */
  public OptionalDouble densityOf(double pixel, NegativeKind negative) {
    negative.requireSilver();
    return within(pixel) ? OptionalDouble.of(scale.densityOf(pixel)) : OptionalDouble.empty();
  }

  /** Density of the clearest usable step: nothing clearer is read. */
  public double clearestDensity() {
    return densities[0];
  }

  /** Density of the densest usable step: nothing denser is read. */
  public double densestDensity() {
    return densities[densities.length - 1];
  }

  /** How well each usable step comes back. */
  public List<CalibrationStep> steps() {
    List<CalibrationStep> steps = new ArrayList<>();
    for (int i = 0; i < densities.length; i++) {
      double read = scale instanceof PixelScale.Formula ? scale.densityOf(pixels[i]) : without(i);
      steps.add(new CalibrationStep(pixels[i], densities[i], read - densities[i]));
    }
    return steps;
  }

  /**
   * How far this calibration and another of the same instrument read the same pixel apart, at most,
   * where both read it [-]: what drifted between them. Empty when they have nothing in common.
   */
  public OptionalDouble largestDifference(ScannerCalibration other) {
    double bright = Math.min(pixels[0], other.pixels[0]);
    double dark = Math.max(last(pixels), last(other.pixels));
    double most = Double.NaN;
    for (int i = 0; i <= COMPARED && dark < bright; i++) {
      double pixel = dark * Math.pow(bright / dark, (double) i / COMPARED);
      double apart = Math.abs(scale.densityOf(pixel) - other.scale.densityOf(pixel));
      most = Double.isNaN(most) ? apart : Math.max(most, apart);
    }
    return Double.isNaN(most) ? OptionalDouble.empty() : OptionalDouble.of(most);
  }

  private boolean within(double pixel) {
    return pixel <= pixels[0] && pixel >= last(pixels);
  }

  private static double last(double[] values) {
    return values[values.length - 1];
  }

  /** Density of a step by a table of the others; NaN at the ends. */
  private double without(int step) {
    int n = densities.length;
    if (step == 0 || step == n - 1) {
      return Double.NaN;
    }
    double[] others = new double[n - 1];
    double[] seen = new double[n - 1];
    for (int i = 0, k = 0; i < n; i++) {
      if (i != step) {
        others[k] = densities[i];
        seen[k++] = pixels[i];
      }
    }
    return new PixelScale.Table(others, seen).densityOf(pixels[step]);
  }

  /**
   * By rising density as long as the pixels fall: from the first step on that is no darker than the
   * one before, the instrument sees nothing. Steps cut off at full scale say nothing either.
   */
  private static List<TabletPatch> usable(List<TabletPatch> patches, int fewest) {
    List<TabletPatch> sorted =
        patches.stream()
            .filter(patch -> patch.pixel() < TabletPatch.FULL)
            .sorted(Comparator.comparing(TabletPatch::density))
            .toList();
    List<TabletPatch> usable = new ArrayList<>();
    for (TabletPatch patch : sorted) {
      if (!usable.isEmpty()) {
        TabletPatch before = usable.get(usable.size() - 1);
        if (patch.density().equals(before.density())) {
          throw new BadValueException(
              "tablet", "two steps of density " + patch.density().value(), "average them first");
        }
        if (patch.pixel() >= before.pixel()) {
          break;
        }
      }
      usable.add(patch);
    }
    if (usable.size() < fewest) {
      throw new BadValueException(
          "usable steps of the tablet",
          String.valueOf(usable.size()),
          "it wants at least "
              + fewest
              + " that get darker one after the other and are not cut off at 65535");
    }
    return usable;
  }

  private static double[] densities(List<TabletPatch> patches) {
    return patches.stream().mapToDouble(patch -> patch.density().value()).toArray();
  }

  private static double[] pixels(List<TabletPatch> patches) {
    return patches.stream().mapToDouble(TabletPatch::pixel).toArray();
  }
}
