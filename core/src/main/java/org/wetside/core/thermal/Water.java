package org.wetside.core.thermal;

import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;

/**
 * A water of the house: where it comes from, what it usually has.
 *
 * @param name as it is called at the sink, for example {@code cold tap}; 1 to 40 characters
 * @param temperature what it usually has, 0 to 100 °C
 * @param hardness hard, soft, distilled, or not said
 */
public record Water(String name, Temperature temperature, Hardness hardness) {
  private static final int LONGEST_NAME = 40;

  /** How much lime there is in it, as far as somebody said. */
  public enum Hardness {
    /** Nobody said. */
    NOT_SAID("not said"),
    /** Little lime. */
    SOFT("soft"),
    /** It leaves lime: drying marks on film, scum in alkaline developers (common practice). */
    HARD("hard"),
    /** None: for the last bath, and for what keeps long. */
    DISTILLED("distilled");

    private final String word;

    Hardness(String word) {
      this.word = word;
    }

    /** Shown and stored. */
    public String word() {
      return word;
    }

    /**
     * Reads {@link #word()} back; blank is not said.
     *
     * @throws BadValueException for any other word
     */
    public static Hardness fromWord(String word) {
      String bare = word.strip();
      for (Hardness hardness : values()) {
        if (hardness.word.equalsIgnoreCase(bare)) {
          return hardness;
        }
      }
      if (bare.isEmpty()) {
        return NOT_SAID;
      }
      throw new BadValueException("hardness of the water", word, "soft, hard, distilled, not said");
    }
  }

  public Water {
    name = name.strip();
    if (name.isEmpty() || name.length() > LONGEST_NAME) {
      throw new BadValueException("name of the water", name, "1 to 40 characters");
    }
    if (temperature.celsius() < 0 || temperature.celsius() > 100) {
      throw new BadValueException(
          "temperature of " + name, temperature.toString(), "liquid water is between 0 and 100 °C");
    }
  }

  /** To mix from. */
  public WaterAtHand atHand() {
    return new WaterAtHand(name, temperature);
  }
}
