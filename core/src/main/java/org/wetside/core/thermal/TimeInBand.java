package org.wetside.core.thermal;

import java.time.Duration;
import java.util.Optional;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.TimeSpan;

/** When a drifting bath is in its band: {@link Inside} or {@link Never}. */
public sealed interface TimeInBand permits TimeInBand.Inside, TimeInBand.Never {
  /**
   * In the band for a stretch.
   *
   * @param from how long after the start it enters; zero when it starts inside
   * @param until how long after the start it leaves; empty when it stays
   */
  record Inside(Duration from, Optional<Duration> until) implements TimeInBand {}

  /**
   * Never in the band.
   *
   * @param nearest the temperature it comes nearest to the band
   */
  record Never(Temperature nearest) implements TimeInBand {}

  /** Follows the drift from a start; it is monotone, so there is at most one stretch. */
  static TimeInBand of(Drift drift, TemperatureRange band, Temperature start) {
    Temperature end = drift.surroundings();
    boolean warming = end.compareTo(start) > 0;
    Temperature entry = warming ? band.low() : band.high();
    Temperature exit = warming ? band.high() : band.low();
    if (!band.contains(start) && !liesBetween(entry, start, end)) {
      return new Never(
          band.outsideBy(start).abs().compareTo(band.outsideBy(end).abs()) <= 0 ? start : end);
    }
    Duration from =
        band.contains(start) ? Duration.ZERO : TimeSpan.ofSeconds(drift.secondsTo(start, entry));
    Optional<Duration> until =
        liesBetween(exit, start, end)
            ? Optional.of(TimeSpan.ofSeconds(drift.secondsTo(start, exit)))
            : Optional.empty();
    return new Inside(from, until);
  }

  /** Whether a drift from start towards end passes the point; the end itself is never reached. */
  private static boolean liesBetween(Temperature point, Temperature start, Temperature end) {
    double whole = end.celsius() - start.celsius();
    double part = point.celsius() - start.celsius();
    return whole > 0 ? part >= 0 && part < whole : part <= 0 && part > whole;
  }
}
