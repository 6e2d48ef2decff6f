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
   * Reads {@link #word()}, or a leaflet's own words: {@code 30 s, then 5 s every minute}, {@code
   * rotary}, {@code semi-stand, one turn half way}. Empty means ordinary.
   *
   * @throws BadValueException for anything else
   */
  public static Agitation parse(String text) {
    String bare = text.strip().toLowerCase(Locale.ROOT);
    String word = bare.replace(' ', '-');
    for (Agitation agitation : values()) {
      if (agitation.word.equals(word)) {
        return agitation;
      }
    }
    if (bare.isEmpty()) {
      return ORDINARY;
    }
    if (hasAny(bare, "two-bath", "two bath")) {
      return TWO_BATH;
    }
    if (hasAny(bare, "stand")) {
      return bare.contains("semi") ? SEMI_STAND : STAND;
    }
    if (hasAny(bare, "continu", "rotary", "rotat", "constant")) {
      return CONTINUOUS;
    }
    if (bare.contains("monobath")) {
      return MONOBATH;
    }
    if (hasAny(bare, "every", "each", "inver", "interval", "tilt", "per min")) {
      return ORDINARY;
    }
    throw new BadValueException(
        "agitation",
        text.strip(),
        "write ordinary, continuous, stand, semi-stand, two-bath or monobath, or how often, such as"
            + " 5 s every minute");
  }

  private static boolean hasAny(String text, String... parts) {
    for (String part : parts) {
      if (text.contains(part)) {
        return true;
      }
    }
    return false;
  }

  /** Whether the text is exactly {@link #word()} of this way. */
  public boolean isSaidBy(String text) {
    return text.strip().equalsIgnoreCase(word);
  }
}
