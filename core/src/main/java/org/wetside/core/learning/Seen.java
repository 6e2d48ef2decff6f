package org.wetside.core.learning;

import java.util.Optional;
import org.wetside.core.quantity.BadValueException;

/**
 * What somebody saw on the negatives of a roll, the edge print first.
 *
 * @param edge how the edge print looks
 * @param shadows how the shadows look; empty when not said
 * @param contrast how contrasty they are; empty when not said
 * @param pair densities of the reference pair; empty when there is none
 */
public record Seen(
    EdgePrint edge,
    Optional<ShadowWord> shadows,
    Optional<ContrastWord> contrast,
    Optional<ReferencePair> pair) {
  /**
   * Something must have been seen.
   *
   * @throws BadValueException when neither a word nor a pair was given
   */
  public Seen {
    if (shadows.isEmpty() && contrast.isEmpty() && pair.isEmpty()) {
      throw new BadValueException(
          "judgement", "", "say how shadows or contrast look, or give the densities of the pair");
    }
  }
}
