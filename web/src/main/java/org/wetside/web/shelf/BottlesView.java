package org.wetside.web.shelf;

import java.util.List;
import org.wetside.app.Wetside;
import org.wetside.core.bath.Bottle;
import org.wetside.core.quantity.BadValueException;

/**
 * Bottles.
 *
 * @param bottles by letter
 */
public record BottlesView(List<BottleView> bottles) {
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
        List.of(BottleView.of(bottle, wetside.listBottles().book(bottle.label().letter()))));
  }
}
