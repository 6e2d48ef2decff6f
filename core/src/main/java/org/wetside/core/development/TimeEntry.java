package org.wetside.core.development;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * One development time as printed, typed in or measured.
 *
 * @param id identity of the row, for example {@code E017}, or {@code own-3}
 * @param filmCode identity of the film
 * @param format what it was printed for
 * @param developer name of the developer
 * @param dilution dilution in our notation
 * @param printedDilution as the source writes it, when that differs; else empty
 * @param exposureIndex index exposed at; empty when not stated
 * @param temperature bath temperature; empty when not stated
 * @param printedTemperature as printed, for example {@code 68 °F}
 * @param time the time, or the short end of a printed range
 * @param longest the long end of a printed range
 * @param vessel tank it was printed for
 * @param agitation way of agitating
 * @param contrast contrast aimed at, in the source's words; may be empty
 * @param citation where it stands; for own entries what the user typed
 * @param standing how it is known
 * @param transcribed whether it was read in another person's transcription
 * @param note what one must know beside it, of an own entry how its source says to agitate; may be
 *     empty
 */
public record TimeEntry(
    String id,
    String filmCode,
    FilmFormat format,
    String developer,
    Dilution dilution,
    String printedDilution,
    Optional<ExposureIndex> exposureIndex,
    Optional<Temperature> temperature,
    String printedTemperature,
    Duration time,
    Optional<Duration> longest,
    Vessel vessel,
    Agitation agitation,
    String contrast,
    Citation citation,
    Standing standing,
    boolean transcribed,
    String note) {
  /** How the ids of the user's own entries begin. */
  public static final String OWN_PREFIX = "own-";

  /** Whether it is the user's own. */
  public boolean isOwn() {
    return id.startsWith(OWN_PREFIX);
  }

  /** How the source of a time begins that the user measured. */
  public static final String MEASURED_SOURCE = "measured";

  /**
   * A line typed in with its source is published; one whose source begins with the word measured is
   * the user's own measurement; without a source it is from memory.
   */
  public static Standing standingOfTyped(String source) {
    String bare = source.strip().toLowerCase(Locale.ROOT);
    if (bare.isEmpty()) {
      return Standing.FROM_MEMORY;
    }
    return bare.matches(MEASURED_SOURCE + "\\b.*") ? Standing.MEASURED : Standing.PUBLISHED;
  }
}
