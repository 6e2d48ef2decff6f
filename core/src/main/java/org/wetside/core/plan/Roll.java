package org.wetside.core.plan;

import java.time.Instant;
import java.util.Optional;
import org.wetside.core.bath.UnitOfUse;

/**
 * A roll in the drawer, or the negatives it became.
 *
 * @param number what it is filed under
 * @param described what its owner said of it; its number is the same
 * @param filmCode code of the film in the catalogue; empty when the catalogue does not know it, or
 *     knows several
 * @param addedAt when it was put in the drawer
 * @param state where it is on its way
 * @param processedAt when it was hung; empty before
 */
public record Roll(
    String number,
    RollDraft described,
    Optional<String> filmCode,
    Instant addedAt,
    RollState state,
    Optional<Instant> processedAt) {
  /** How much film it is, counted the makers' way. */
  public UnitOfUse amount() {
    return described.size().amount(described.frames());
  }

  /** For example {@code TRI-X 400 at 400}. */
  public String filmAndIndex() {
    return described.film()
        + described
            .exposureIndex()
            .map(index -> " at " + index.toString().replace("EI ", ""))
            .orElse("");
  }
}
