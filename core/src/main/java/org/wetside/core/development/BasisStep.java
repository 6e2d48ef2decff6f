package org.wetside.core.development;

import java.util.List;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * One step from a printed time to the asked one.
 *
 * @param kind which step
 * @param description what was done, in words, with the printed values used
 * @param factor what the time was multiplied by [-]; 1 for the entry itself
 * @param lnSd standard deviation it adds, in ln(time) [-]
 * @param standing how it is known
 * @param citation where it is from; for a computed step the rows it was computed from
 * @param printedTemperatures for a temperature step the printed temperatures used, else empty
 * @param guess whether it rests on no value of this film at all
 */
public record BasisStep(
    Kind kind,
    String description,
    double factor,
    double lnSd,
    Standing standing,
    Citation citation,
    List<String> printedTemperatures,
    boolean guess) {
  /** The kinds of step, in the order in which they are taken. */
  public enum Kind {
    /** The time as it stands in the source. */
    ENTRY("entry"),
    /** To another temperature. */
    TEMPERATURE("temperature"),
    /** To another dilution. */
    DILUTION("dilution"),
    /** To another exposure index. */
    EXPOSURE_INDEX("exposure index"),
    /** To another contrast at the same index. */
    CONTRAST("contrast"),
    /** To another tank. */
    VESSEL("tank"),
    /** By the factor the user has learned and accepted. */
    OWN_FACTOR("your own factor");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The name of the step, as shown and as written to JSON. */
    public String word() {
      return word;
    }
  }

  public BasisStep {
    printedTemperatures = List.copyOf(printedTemperatures);
  }
}
