package org.wetside.core.plan;

import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Units;

/**
 * What a load is developed in.
 *
 * @param developer name of the developer, 1 to 80 characters
 * @param dilution how it is diluted
 * @param temperature of the developer at the pour, between 5 and 60 °C
 */
public record Recipe(String developer, Dilution dilution, Temperature temperature) {
  private static final double COLDEST_C = 5;
  private static final double WARMEST_C = 60;

  public Recipe {
    developer = developer.strip();
    if (developer.isEmpty() || developer.length() > 80) {
      throw new BadValueException("developer", developer, "1 to 80 characters, for example D-76");
    }
    if (temperature.celsius() < COLDEST_C || temperature.celsius() > WARMEST_C) {
      throw new BadValueException(
          "developer temperature", temperature.toString(), "between 5 and 60 °C");
    }
  }

  /** For example {@code D-76 1+1, 20 °C}. */
  @Override
  public String toString() {
    return words(Units.METRIC);
  }

  /** For example {@code D-76 1+1, 68 °F}. */
  public String words(Units units) {
    return developer + " " + dilution.label() + ", " + units.words(temperature);
  }
}
