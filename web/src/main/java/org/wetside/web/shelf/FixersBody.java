package org.wetside.web.shelf;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.shelf.EmptyUnsaid;
import org.wetside.app.shelf.Emptying;
import org.wetside.app.shelf.TurnFixers;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.shelf.FixerPair;

/**
 * Two fixers become a pair, or the first of a pair is spent.
 *
 * @param first letter of the first
 * @param second letter of the second, to make a pair
 * @param spent whether the first is spent: it is discarded, the second moves down
 * @param fresh letter of the fresh fixer that comes second then
 * @param jug name of the waste jug that what is discarded goes into; null when nobody says where
 */
public record FixersBody(
    @Nullable String first,
    @Nullable String second,
    @Nullable Boolean spent,
    @Nullable String fresh,
    @Nullable String jug) {
  /**
   * Turns the pair.
   *
   * @throws BadValueException as {@link TurnFixers#turn}, and when the jug does not take it
   */
  public FixerPair.Turn turn(Wetside wetside) {
    Emptying emptying =
        jug == null || jug.isBlank()
            ? new EmptyUnsaid(wetside.clock())
            : wetside.wasteBook().pourWaste().into(jug);
    return wetside
        .turnFixers()
        .turn(first == null ? "" : first, Optional.ofNullable(fresh), emptying);
  }
}
