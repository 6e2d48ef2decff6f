package org.wetside.app.picture;

import java.util.function.DoubleUnaryOperator;

/**
 * How values between 0 and 1 follow the light, judged at places between.
 *
 * @param gamma exponent that does the same to a middle grey [-]; 1 is linear
 * @param off how far it leaves the straight line at most, as a share of full scale [-]
 */
record ToneCurve(double gamma, double off) {
  /** A rounded table of 8 bits leaves the line by this much. */
  private static final double NEARLY = 0.005;

  private static final int LOOKED_AT = 64;

  static ToneCurve of(DoubleUnaryOperator curve) {
    double off = 0;
    for (int i = 0; i <= LOOKED_AT; i++) {
      double at = (double) i / LOOKED_AT;
      off = Math.max(off, Math.abs(curve.applyAsDouble(at) - at));
    }
    double middle = Math.min(Math.max(curve.applyAsDouble(0.5), 1e-6), 1 - 1e-6);
    return new ToneCurve(Math.log(middle) / Math.log(0.5), off);
  }

  /** Of values at equal distances. */
  static ToneCurve ofTable(double[] values) {
    return of(
        at -> {
          double place = at * (values.length - 1);
          int below = Math.min((int) place, values.length - 2);
          double part = place - below;
          return values[below] * (1 - part) + values[below + 1] * part;
        });
  }

  Encoding encoding(String where) {
    return off <= NEARLY
        ? new Encoding(Encoding.Kind.LINEAR, where + " says that it is linear")
        : new Encoding(
            Encoding.Kind.CURVED,
            where + " says that it is gamma-encoded, about " + Math.round(gamma * 10) / 10.0);
  }
}
