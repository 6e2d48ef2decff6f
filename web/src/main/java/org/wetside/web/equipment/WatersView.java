package org.wetside.web.equipment;

import java.util.List;
import org.wetside.app.Wetside;

/**
 * The waters of the house.
 *
 * @param waters the one preferred for mixing first
 */
public record WatersView(List<WaterView> waters) {
  /** All of a home. */
  public static WatersView of(Wetside wetside) {
    return new WatersView(wetside.keepWaters().all().stream().map(WaterView::of).toList());
  }
}
