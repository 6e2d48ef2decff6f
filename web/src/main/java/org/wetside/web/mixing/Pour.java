package org.wetside.web.mixing;

import java.util.Locale;

/** Volumes as one reads them off a measure; exact values stay in the views. */
public final class Pour {
  /** Below this a tenth of a millilitre can be measured. */
  private static final double FINE_ML = 100;

  private Pour() {}

  /** For example {@code 8 mL}, {@code 31.3 mL}, {@code 144 mL}. */
  public static String words(double millilitres) {
    String text = String.format(Locale.ROOT, millilitres < FINE_ML ? "%.1f" : "%.0f", millilitres);
    return (text.endsWith(".0") ? text.substring(0, text.length() - 2) : text) + " mL";
  }

  /** A temperature to a tenth, for example {@code 20.9 °C}. */
  public static String degrees(double celsius) {
    String text = String.format(Locale.ROOT, "%.1f", celsius);
    return (text.endsWith(".0") ? text.substring(0, text.length() - 2) : text) + " °C";
  }
}
