package org.wetside.core.thermal;

import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;

/**
 * Density of air-free water between 0 and 100 °C by Kell's formula of 1975 (source CH-S52).
 *
 * <p>ρ = (a0 + a1·t + a2·t² + a3·t³ + a4·t⁴ + a5·t⁵) / (1 + b·t), ρ in kg/m³, t in °C. The formula
 * circulates with a wrong denominator; the right constant is 16.879850e-3.
 */
public final class WaterDensity {
  private static final double[] KELL_NUMERATOR = {
    999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12
  };
  private static final double KELL_DENOMINATOR_PER_CELSIUS = 16.879850e-3;
  private static final double COLDEST_CELSIUS = 0;
  private static final double HOTTEST_CELSIUS = 100;

  private WaterDensity() {}

  /**
   * Density in kilograms per cubic metre, which is grams per litre.
   *
   * @throws BadValueException below 0 °C or above 100 °C
   */
  public static double kilogramsPerCubicMetre(Temperature temperature) {
    double t = temperature.celsius();
    if (t < COLDEST_CELSIUS || t > HOTTEST_CELSIUS) {
      throw new BadValueException(
          "temperature of a liquid",
          temperature.toString(),
          "liquid water is between 0 °C and 100 °C");
    }
    double sum = 0;
    for (int power = KELL_NUMERATOR.length - 1; power >= 0; power--) {
      sum = sum * t + KELL_NUMERATOR[power];
    }
    return sum / (1 + KELL_DENOMINATOR_PER_CELSIUS * t);
  }

  /** Mass of a volume of water, in grams. */
  static double grams(double millilitres, Temperature temperature) {
    return millilitres * kilogramsPerCubicMetre(temperature) / 1000.0;
  }

  /** The volume that a mass of water in grams takes up. */
  static Volume volumeOf(double grams, Temperature temperature) {
    return Volume.ofMillilitres(grams * 1000.0 / kilogramsPerCubicMetre(temperature));
  }
}
