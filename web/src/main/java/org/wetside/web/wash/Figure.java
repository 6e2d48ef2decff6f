package org.wetside.web.wash;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/** Small numbers as people read them: two digits, powers of ten where there are many noughts. */
public final class Figure {
  private static final double PLAIN_FROM = 0.001;
  private static final double PLAIN_TO = 10_000;
  private static final String SUPERSCRIPT = "⁰¹²³⁴⁵⁶⁷⁸⁹";

  private Figure() {}

  /** For example {@code 0.34}, {@code 0.0083}, {@code 1.3·10⁻¹⁰}. */
  public static String of(double value) {
    if (value == 0) {
      return "0";
    }
    if (value >= PLAIN_FROM && value < PLAIN_TO) {
      BigDecimal rounded = new BigDecimal(value).round(new MathContext(2));
      return rounded.stripTrailingZeros().toPlainString();
    }
    String[] parts = String.format(Locale.ROOT, "%.1e", value).split("e", -1);
    return parts[0] + "·10" + raised(Integer.parseInt(parts[1]));
  }

  private static String raised(int exponent) {
    StringBuilder text = new StringBuilder(exponent < 0 ? "⁻" : "");
    for (char digit : Integer.toString(Math.abs(exponent)).toCharArray()) {
      text.append(SUPERSCRIPT.charAt(digit - '0'));
    }
    return text.toString();
  }
}
