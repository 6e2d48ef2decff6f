package org.wetside.core.safety;

/** What a thing is, as far as it matters for what it may meet. */
public enum Nature {
  WATER("water"),
  /** Household bleach and its like; not a photographic bleach. */
  HYPOCHLORITE("hypochlorite"),
  /** An acid or an acid salt, at any strength. */
  ACID("acid"),
  /** An acid so strong that water poured into it boils. */
  CONCENTRATED_ACID("concentrated acid"),
  ALKALI("alkali"),
  /** Hydroxide or carbonate: what makes a developer strongly alkaline. */
  STRONG_ALKALI("strong alkali"),
  /** Ammonia or an ammonium salt. */
  AMMONIA("ammonia"),
  THIOSULFATE("thiosulfate"),
  SULFITE("sulfite"),
  FERRICYANIDE("ferricyanide"),
  SULFIDE("sulfide"),
  DEVELOPER("developer"),
  STOP_BATH("stop bath"),
  FIXER("fixer"),
  /** The powders of one package. */
  POWDER_PACKAGE("powder package");

  private final String word;

  Nature(String word) {
    this.word = word;
  }

  /** The word of the trade. */
  public String word() {
    return word;
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws IllegalArgumentException for any other word
   */
  public static Nature fromWord(String word) {
    for (Nature nature : values()) {
      if (nature.word.equals(word.strip())) {
        return nature;
      }
    }
    throw new IllegalArgumentException("no such nature of a material: " + word);
  }
}
