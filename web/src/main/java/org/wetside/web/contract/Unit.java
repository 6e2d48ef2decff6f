package org.wetside.web.contract;

import java.util.Optional;

/** Units as the ends of field names say them. */
enum Unit {
  MILLILITRES("Ml", "mL"),
  MILLISECONDS("Milliseconds", "ms"),
  SECONDS("Seconds", "s"),
  MINUTES("Minutes", "min"),
  GRAMS("Grams", "g"),
  GRAMS_PER_LITRE("GramsPerLitre", "g/L"),
  GRAMS_PER_SQUARE_METRE("GramsPerSquareMetre", "g/m²"),
  CELSIUS("C", "°C"),
  FAHRENHEIT("F", "°F"),
  KELVINS("K", "K"),
  KELVINS_PER_MINUTE("KPerMinute", "K/min"),
  HERTZ("Hertz", "Hz");

  private final String suffix;
  private final String symbol;

  Unit(String suffix, String symbol) {
    this.suffix = suffix;
    this.symbol = symbol;
  }

  /** As it is printed after a number. */
  String symbol() {
    return symbol;
  }

  /** The unit that the name of a number ends with: {@code waterMl}, or is: {@code seconds}. */
  static Optional<Unit> of(String field) {
    for (Unit unit : values()) {
      boolean alone = unit.suffix.length() > 2 && field.equalsIgnoreCase(unit.suffix);
      if (alone || field.endsWith(unit.suffix)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }
}
