package org.wetside.web.times;

import org.jspecify.annotations.Nullable;
import org.wetside.app.times.TimeRequest;

/**
 * A question for a development time as it is typed; null is not said.
 *
 * @param film name or code
 * @param developer name
 * @param dilution {@code stock}, {@code 1+1}, {@code B}
 * @param ei exposure index
 * @param temp temperature with its unit
 * @param vessel {@code small}, {@code large}, {@code rotary} or {@code tray}; small when not said
 * @param format {@code 135}, {@code 120}, {@code sheet}; any when not said
 * @param agitation the developer's usual way when not said
 * @param aim contrast index wanted; the source's own when not said
 * @param beyond yes: a temperature outside 18 to 24 °C is wished for
 */
record TimeQuery(
    @Nullable String film,
    @Nullable String developer,
    @Nullable String dilution,
    @Nullable String ei,
    @Nullable String temp,
    @Nullable String vessel,
    @Nullable String format,
    @Nullable String agitation,
    @Nullable String aim,
    @Nullable String beyond) {
  TimeRequest request() {
    return new TimeRequest(
        text(film),
        text(developer),
        text(dilution),
        text(ei),
        text(temp),
        text(vessel),
        text(format),
        text(agitation),
        text(aim),
        "yes".equals(beyond));
  }

  private static String text(@Nullable String value) {
    return value == null ? "" : value;
  }
}
