package org.wetside.web.strip;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Strips that are computed, not read: D = 0.20 + 0.12 γ ln(1 + e^((x + 2.5)/0.12)). */
final class InventedStrips {
  private InventedStrips() {}

  /** Twenty-one steps of 0.15 from −3.40, with the header, rounded to 0.01. */
  static String readings(double gamma) {
    StringBuilder text = new StringBuilder("logH,density\n");
    for (int step = 0; step < 21; step++) {
      double x = -3.40 + 0.15 * step;
      text.append(String.format(Locale.ROOT, "%.2f,%.2f%n", x, density(gamma, x)));
    }
    return text.toString();
  }

  static double density(double gamma, double x) {
    return 0.20 + gamma * 0.12 * Math.log1p(Math.exp((x + 2.5) / 0.12));
  }

  static String form(Map<String, String> fields) {
    return fields.entrySet().stream()
        .map(
            field ->
                field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
        .collect(Collectors.joining("&"));
  }
}
