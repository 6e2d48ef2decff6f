package org.wetside.web.density;

import java.util.Locale;
import org.wetside.core.sensitometry.ScannerCalibration;

/** How much is claimed, and figures as they are written. */
public final class Claim {
  /** Stands wherever a density from a picture is shown. */
  public static final String TEXT =
      "No more is claimed than ±"
          + ScannerCalibration.CLAIM_DENSITY
          + " of net density below "
          + ScannerCalibration.CLAIMED_BELOW
          + " (SE-S21, S22, S23); above that nothing is.";

  /** Stands wherever a speed is read from such densities. */
  public static final String OF_SPEED =
      "Of the speed no more is claimed than ±"
          + ScannerCalibration.CLAIM_LOG10
          + " in log exposure, a third of a stop.";

  private Claim() {}

  /** A density as it is read: three decimals. */
  public static String density(double value) {
    return String.format(Locale.ROOT, "%.3f", value + 0.0).replaceFirst("^-0\\.000$", "0.000");
  }

  /** A difference of densities, with its sign. */
  public static String difference(double value) {
    String text = String.format(Locale.ROOT, "%+.3f", value);
    return text.equals("-0.000") || text.equals("+0.000") ? "0.000" : text.replace('-', '−');
  }

  /** A pixel value: one decimal. */
  public static String pixel(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  /** For programs: no digits beyond what means anything. */
  static double rounded(double density) {
    return Math.round(density * 1e4) / 1e4;
  }
}
