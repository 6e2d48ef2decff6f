package org.wetside.core.waste;

import java.util.Optional;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.BadValueException;

/**
 * What a jug collects. Silver-rich are fixer, bleach-fix and the wash of little water; developer
 * and wash water are not (CH-S22). Keeping developer and stop apart is common practice.
 */
public enum WasteKind {
  SILVER("silver-bearing", "fixer, bleach-fix, the wash water of little flow"),
  DEVELOPER("developer", "developer and its replenisher"),
  STOP("stop", "stop bath"),
  /** Whatever else there is, as far as it may meet. */
  OTHER("other", "bleach, wash aid, stabiliser and whatever may meet them");

  private final String word;
  private final String takes;

  WasteKind(String word, String takes) {
    this.word = word;
    this.takes = takes;
  }

  /** The word shown and stored. */
  public String word() {
    return word;
  }

  /** What belongs into it, in words. */
  public String takes() {
    return takes;
  }

  /** Where a bath of that kind belongs. */
  public static WasteKind of(BathKind bath) {
    return switch (bath) {
      case FIXER, BLEACH_FIX -> SILVER;
      case DEVELOPER, REPLENISHER -> DEVELOPER;
      case STOP_BATH -> STOP;
      default -> OTHER;
    };
  }

  /** Whether that may go in; what is no bath, such as wash water, may go in anywhere. */
  public boolean takes(Optional<BathKind> bath) {
    return this == OTHER || bath.isEmpty() || of(bath.get()) == this;
  }

  /**
   * Reads {@link #word()} back.
   *
   * @throws BadValueException for any other word
   */
  public static WasteKind fromWord(String word) {
    for (WasteKind kind : values()) {
      if (kind.word.equalsIgnoreCase(word.strip())) {
        return kind;
      }
    }
    throw new BadValueException(
        "kind of waste", word, "it is silver-bearing, developer, stop or other");
  }
}
