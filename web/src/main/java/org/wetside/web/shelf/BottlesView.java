package org.wetside.web.shelf;

import java.util.List;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.shelf.Bottle;

/**
 * Bottles.
 *
 * @param bottles by letter
 */
public record BottlesView(List<BottleView> bottles) {
  /** How many lines of a book are shown at once. */
  static final int LINES = 100;

  /** All that stand on the shelf of a home. */
  public static BottlesView of(Wetside wetside) {
    return new BottlesView(wetside.listBottles().all().stream().map(BottleView::of).toList());
  }

  /**
   * One with its book, as a list of one.
   *
   * @throws BadValueException when none of that letter stands on the shelf
   */
  public static BottlesView one(Wetside wetside, String letter) {
    Bottle bottle =
        wetside
            .listBottles()
            .find(letter)
            .orElseThrow(() -> new BadValueException("bottle", letter, "none stands on the shelf"));
    return new BottlesView(
        List.of(
            BottleView.of(
                bottle,
                wetside.listBottles().page(bottle.label().letter(), Optional.empty(), LINES))));
  }
}
