package org.wetside.core.sensitometry;

import java.util.Locale;

/** Why a result is not determinable, in words. */
final class NotReached {
  static final String BAND =
      "band not determinable: too many of the resamples do not reach its end points";

  private NotReached() {}

  static String why(Measure measure, MonotoneCubic curve, double baseFog) {
    double speedPoint = curve.placeOf(baseFog + CurveReader.SPEED_DENSITY);
    if (measure == Measure.GAMMA) {
      return "not determinable: no four neighbouring steps lie within 0.01 of a straight line";
    }
    if (measure == Measure.CONTRAST_INDEX) {
      return String.format(
          Locale.ROOT,
          "not determinable: the readings go from net density %.2f to %.2f, and its ray ends beyond"
              + " them (contrast index 0.58 wants 1.10)",
          curve.firstY() - baseFog,
          curve.lastY() - baseFog);
    }
    if (Double.isNaN(speedPoint)) {
      return curve.firstY() > baseFog + CurveReader.SPEED_DENSITY
          ? String.format(
              Locale.ROOT,
              "not determinable: the first reading, net density %.2f, is denser than the speed"
                  + " point at 0.10",
              curve.firstY() - baseFog)
          : "not determinable: no reading reaches 0.10 above base plus fog";
    }
    double length =
        measure == Measure.AVERAGE_GRADIENT ? CurveReader.CHORD_LOG10 : CurveReader.CONDITION_LOG10;
    return String.format(
        Locale.ROOT,
        "not determinable: it ends at log H %.2f, the readings end at %.2f",
        speedPoint + length,
        curve.lastX());
  }
}
