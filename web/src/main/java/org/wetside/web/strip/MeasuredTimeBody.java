package org.wetside.web.strip;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Which time is put among the user's own.
 *
 * @param curves numbers of the strips
 * @param n −2 to +2; 0 when not said
 * @param ei exposure index it is for; none when not said
 * @param range log exposure range, log10; 1.05 when not said
 * @param flare log10; 0.40 when not said
 * @param measure contrast-index or average-gradient
 */
public record MeasuredTimeBody(
    @Nullable List<Long> curves,
    @Nullable Integer n,
    @Nullable Double ei,
    @Nullable Double range,
    @Nullable Double flare,
    @Nullable String measure) {
  FamilyQuery query() {
    return new FamilyQuery(
        curves == null
            ? null
            : curves.stream().map(String::valueOf).collect(Collectors.joining(",")),
        text(range),
        text(flare),
        measure);
  }

  int wanted() {
    return n == null ? 0 : n;
  }

  String index() {
    String said = text(ei);
    return said == null ? "" : said;
  }

  private static @Nullable String text(@Nullable Double number) {
    return number == null
        ? null
        : java.math.BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }
}
