package org.wetside.core.quantity;

/** The checks that every quantity makes once, in its constructor. */
final class Finite {
  private Finite() {}

  /** Returns the value with -0.0 turned into 0.0, so that equals and hashCode behave. */
  static double require(double value, String thing, String unit) {
    if (!Double.isFinite(value)) {
      throw new BadValueException(thing, value + " " + unit, "it must be a finite number");
    }
    return value + 0.0;
  }

  static double requireAtLeast(double value, double least, String thing, String unit) {
    double finite = require(value, thing, unit);
    if (finite < least) {
      throw new BadValueException(
          thing, plain(value) + " " + unit, "it must be at least " + plain(least) + " " + unit);
    }
    return finite;
  }

  static double requireAbove(double value, double limit, String thing, String unit) {
    double finite = require(value, thing, unit);
    if (finite <= limit) {
      throw new BadValueException(
          thing, plain(value) + " " + unit, "it must be more than " + plain(limit) + " " + unit);
    }
    return finite;
  }

  /** The shortest text that reads back as the same number, without a trailing {@code .0}. */
  static String plain(double value) {
    String text = Double.toString(value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
