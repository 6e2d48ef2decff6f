package org.wetside.app.density;

import java.util.regex.Pattern;
import org.wetside.core.quantity.BadValueException;

/** Numbers without a unit, as they are typed or stand in a cell. */
final class TypedNumber {
  private static final Pattern DECIMAL =
      Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");
  private static final Pattern WHOLE = Pattern.compile("-?\\d{1,9}");

  private TypedNumber() {}

  static double decimal(String thing, String text, String example) {
    String bare = text.strip();
    if (bare.matches("[+-]?\\d+,\\d+")) {
      throw new BadValueException(
          thing, bare, "write the decimal mark as a point, for example " + example);
    }
    if (!DECIMAL.matcher(bare).matches()) {
      throw new BadValueException(thing, bare, "a number, for example " + example);
    }
    return Double.parseDouble(bare);
  }

  static int pixels(String thing, String text) {
    String bare = text.strip();
    if (!WHOLE.matcher(bare).matches()) {
      throw new BadValueException(thing, bare, "a whole number of pixels, for example 120");
    }
    return Integer.parseInt(bare);
  }
}
