package org.wetside.core.quantity;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number followed by a unit, as people type it: {@code 68F}, {@code 21.5 °C}, {@code 256mL}. */
record Written(double number, String unit) {
  private static final Pattern FORM =
      Pattern.compile(
          "\\s*([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)\\s*([^\\d\\s.,][^\\d]*)?\\s*");

  /**
   * @throws BadValueException when the text is not one number and one unit; a decimal comma gets
   *     its own answer
   */
  static Written parse(String thing, String text, String example) {
    if (text.matches(".*\\d,\\d.*")) {
      throw new BadValueException(
          thing, text, "write the decimal mark as a point, for example " + example);
    }
    Matcher matcher = FORM.matcher(text);
    if (!matcher.matches()) {
      throw new BadValueException(
          thing, text, "write a number and its unit, for example " + example);
    }
    String unit = matcher.group(2) == null ? "" : matcher.group(2).strip().toLowerCase(Locale.ROOT);
    return new Written(Double.parseDouble(matcher.group(1)), unit);
  }
}
