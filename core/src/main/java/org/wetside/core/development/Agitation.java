package org.wetside.core.development;

import java.util.Locale;
import org.wetside.core.quantity.BadValueException;

/**
 * The way of moving the developer that a time was printed for. Only {@link #ORDINARY} and {@link
 * #CONTINUOUS} times can stand in for each other.
 */
public enum Agitation {
  /** Initial agitation, then a cycle every half or whole minute. */
  ORDINARY("ordinary"),
  /** All the time: rotary, shuffled sheets. */
  CONTINUOUS("continuous"),
  /** Initial agitation, then none. */
  STAND("stand"),
  /** Initial agitation, then one cycle half way. */
  SEMI_STAND("semi-stand"),
  /** Developing agent in one bath, alkali in the next. */
  TWO_BATH("two-bath"),
  /** Developer and fixer in one. */
  MONOBATH("monobath");

  private final String word;

  Agitation(String word) {
    this.word = word;
  }

  /** The word shown, stored and read by {@link #parse}. */
  public String word() {
    return word;
  }

  /** Whether a time for this way may be used for the other. */
  public boolean serves(Agitation asked) {
    return this == asked || (isOrdinary() && asked.isOrdinary());
  }

  private boolean isOrdinary() {
    return this == ORDINARY || this == CONTINUOUS;
  }

  /**
   * Reads {@link #word()}; empty means ordinary.
   *
   * @throws BadValueException for anything else
   */
  public static Agitation parse(String text) {
    String bare = text.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
    if (bare.isEmpty()) {
      return ORDINARY;
    }
    for (Agitation agitation : values()) {
      if (agitation.word.equals(bare)) {
        return agitation;
      }
    }
    throw new BadValueException(
        "agitation",
        text.strip(),
        "write ordinary, continuous, stand, semi-stand, two-bath or monobath");
  }
}
