package org.wetside.core.bath;

/** What a liquid does to film. Each has a word, a hatch on screen, and never a colour. */
public enum BathKind {
  DEVELOPER("developer"),
  STOP_BATH("stop bath"),
  FIXER("fixer"),
  WASH_AID("wash aid"),
  FINAL_RINSE("final rinse"),
  BLEACH("bleach"),
  BLEACH_FIX("bleach-fix"),
  CLEARING_BATH("clearing bath"),
  CONDITIONER("conditioner"),
  STABILISER("stabiliser"),
  HARDENER("hardener"),
  REPLENISHER("replenisher");

  private final String word;

  BathKind(String word) {
    this.word = word;
  }

  /** The trade's word, shown and stored. */
  public String word() {
    return word;
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws org.wetside.core.quantity.BadValueException for any other word, with the list
   */
  public static BathKind fromWord(String word) {
    for (BathKind kind : values()) {
      if (kind.word.equalsIgnoreCase(word.strip())) {
        return kind;
      }
    }
    throw new org.wetside.core.quantity.BadValueException(
        "kind of bath", word, "it must be one of " + words());
  }

  private static String words() {
    return String.join(
        ", ", java.util.Arrays.stream(values()).map(BathKind::word).toArray(String[]::new));
  }
}
