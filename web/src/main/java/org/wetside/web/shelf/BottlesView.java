package org.wetside.web.shelf;

import java.util.List;
import org.wetside.app.Wetside;

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
}
