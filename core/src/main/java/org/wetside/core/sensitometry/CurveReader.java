package org.wetside.core.sensitometry;

/**
 * Reads every {@link Measure} off a curve, in the order of the enum; NaN where the curve does not
 * reach. Bare numbers, because it is done a thousand times for one band.
 */
final class CurveReader {
  /** ISO 6 (SE-S01, S02): the speed point above base plus fog, and the exposure beyond it. */
  static final double SPEED_DENSITY = 0.10;

  static final double CONDITION_LOG10 = 1.30;
  static final double CHORD_LOG10 = 1.50;

  /** S = 0.80/Hm (from memory, agrees with SE-S40). */
  static final double SPEED_CONSTANT = 0.80;

  /** ΔX at ΔD 0.80, where both speeds are the same (SE-S04, S05). */
  private static final double DELTA_X_AT_CONDITION = 0.2956;

  private static final double NEAR_RADIUS = 0.2;
  private static final double FAR_RADIUS = 2.2;
  private static final double LEAST_ANGLE = 0.2;
  private static final double MOST_ANGLE = 1.2;
  private static final double ANGLE_STEP = 0.05;
  private static final double ANGLE_TIGHT = 1e-11;
  private static final int MOST_STEPS = 100;
  private static final int MEASURES = Measure.values().length;

  private CurveReader() {}

  static double[] read(MonotoneCubic curve, double[] logH, double[] density, double baseFog) {
    double[] out = new double[MEASURES];
    double speedPoint = curve.placeOf(baseFog + SPEED_DENSITY);
    double deltaD = chord(curve, speedPoint, CONDITION_LOG10);
    double deltaX = deltaX(deltaD);
    double speed = SPEED_CONSTANT / Math.pow(10, speedPoint);
    out[Measure.LOG_HM.place()] = speedPoint;
    out[Measure.DELTA_D.place()] = deltaD;
    out[Measure.DELTA_X.place()] = deltaX;
    out[Measure.EXPOSURE_INDEX.place()] = speed;
    out[Measure.SPEED_DELTA_X.place()] = speed * Math.pow(10, deltaX - DELTA_X_AT_CONDITION);
    out[Measure.AVERAGE_GRADIENT.place()] = chord(curve, speedPoint, CHORD_LOG10) / CHORD_LOG10;
    out[Measure.CONTRAST_INDEX.place()] = contrastIndex(curve, baseFog);
    out[Measure.GAMMA.place()] = StraightPart.slope(logH, density);
    return out;
  }

  /** C. N. Nelson and J. L. Simonds 1956 (SE-S04); the quadratic is recalled. */
  static double deltaX(double deltaD) {
    return 0.83 - 0.86 * deltaD + 0.24 * deltaD * deltaD;
  }

  private static double chord(MonotoneCubic curve, double from, double length) {
    return curve.at(from + length) - curve.at(from);
  }

  /** The angle at which the ray from base plus fog meets the curve at both radii, scanned. */
  private static double contrastIndex(MonotoneCubic curve, double baseFog) {
    double highest = (curve.lastY() - baseFog) / FAR_RADIUS;
    double end = highest >= 1 ? MOST_ANGLE : Math.min(MOST_ANGLE, Math.asin(Math.max(highest, 0)));
    double below = Double.NaN;
    double angle = LEAST_ANGLE;
    while (angle <= end) {
      double miss = radiusMiss(curve, baseFog, angle);
      if (miss < 0) {
        below = angle;
      } else if (miss >= 0 && !Double.isNaN(below)) {
        return Math.tan(between(curve, baseFog, below, angle));
      }
      if (angle == end) {
        break;
      }
      angle = Math.min(angle + ANGLE_STEP, end);
    }
    return Double.NaN;
  }

  /** How much further the meeting points lie apart than the radii say, along log exposure. */
  private static double radiusMiss(MonotoneCubic curve, double baseFog, double angle) {
    double sine = Math.sin(angle);
    return curve.placeOf(Math.min(baseFog + FAR_RADIUS * sine, curve.lastY()))
        - curve.placeOf(baseFog + NEAR_RADIUS * sine)
        - (FAR_RADIUS - NEAR_RADIUS) * Math.cos(angle);
  }

  /** Regula falsi with the old end's miss halved (Illinois). */
  private static double between(MonotoneCubic curve, double baseFog, double from, double to) {
    double low = from;
    double high = to;
    double missLow = radiusMiss(curve, baseFog, low);
    double missHigh = radiusMiss(curve, baseFog, high);
    int lastSide = 0;
    for (int i = 0; i < MOST_STEPS && high - low > ANGLE_TIGHT && missHigh > 0; i++) {
      double middle = (low * missHigh - high * missLow) / (missHigh - missLow);
      double miss = radiusMiss(curve, baseFog, middle);
      if (Math.abs(miss) < ANGLE_TIGHT) {
        return middle;
      }
      int side = miss < 0 ? -1 : 1;
      if (side < 0) {
        low = middle;
        missLow = miss;
        missHigh = side == lastSide ? missHigh / 2 : missHigh;
      } else {
        high = middle;
        missHigh = miss;
        missLow = side == lastSide ? missLow / 2 : missLow;
      }
      lastSide = side;
    }
    return high;
  }
}
