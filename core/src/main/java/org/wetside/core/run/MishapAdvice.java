package org.wetside.core.run;

import java.util.Optional;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * Something that can happen in a run, and what to do about it.
 *
 * @param what what happened, as a person would say it
 * @param firstMinute what to do at once
 * @param afterwards what to do, or expect, later
 * @param standing how the advice is known
 * @param citation where it stands
 */
public record MishapAdvice(
    String what, String firstMinute, String afterwards, Standing standing, Citation citation) {
  /** In the words of the list; a new time may be known. */
  public static final String WRONG_DILUTION = "wrong dilution noticed in the developer";

  /** In the words of the list; two bottles are in doubt. */
  public static final String WRONG_BOTTLE = "poured into the wrong bottle";

  /** In the words of the list; the next bath is in doubt. */
  public static final String NO_RINSE = "rinse forgotten";

  /** What is asked for once it was told: {@code dilution}, {@code bottle}, or nothing. */
  public Optional<String> asks() {
    return what.equals(WRONG_DILUTION)
        ? Optional.of("dilution")
        : what.equals(WRONG_BOTTLE) ? Optional.of("bottle") : Optional.empty();
  }
}
