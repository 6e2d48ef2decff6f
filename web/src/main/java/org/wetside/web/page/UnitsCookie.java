package org.wetside.web.page;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.Units;

/** How the chosen units stand in a cookie, for example {@code fahrenheit.us_fluid_ounces}. */
final class UnitsCookie {
  static final String NAME = "units";

  private UnitsCookie() {}

  static String write(Units units) {
    return word(units.scale()) + "." + word(units.measure());
  }

  /** Whatever cannot be read is no choice. */
  static Units read(@Nullable String cookie) {
    for (Units.Scale scale : Units.Scale.values()) {
      for (Units.Measure measure : Units.Measure.values()) {
        Units units = new Units(scale, measure);
        if (write(units).equals(cookie)) {
          return units;
        }
      }
    }
    return Units.METRIC;
  }

  static String word(Enum<?> choice) {
    return choice.name().toLowerCase(Locale.ROOT);
  }
}
