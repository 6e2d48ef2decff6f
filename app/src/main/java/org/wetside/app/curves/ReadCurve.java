package org.wetside.app.curves;

import org.wetside.core.sensitometry.CharacteristicCurve;
import org.wetside.core.sensitometry.CurveReadings;
import org.wetside.core.sensitometry.CurveResults;
import org.wetside.reference.StandardSpeeds;

/** What speed and contrast the readings of a piece of film show. */
public final class ReadCurve {
  /** Resamples are drawn with it, so that an answer can be repeated. */
  public static final long SEED = 1;

  /**
   * What follows.
   *
   * @param curve through the readings
   * @param results read off it
   */
  public record Answer(CharacteristicCurve curve, CurveResults results) {}

  /**
   * Reads the curve.
   *
   * @throws org.wetside.core.quantity.BadValueException when the readings make no curve
   */
  public Answer answer(CurveReadings readings) {
    CharacteristicCurve curve = CharacteristicCurve.through(readings);
    return new Answer(curve, curve.results(StandardSpeeds.open(), SEED));
  }
}
