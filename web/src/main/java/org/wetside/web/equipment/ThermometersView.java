package org.wetside.web.equipment;

import java.util.List;
import org.wetside.app.Wetside;

/**
 * Thermometers.
 *
 * @param thermometers by name
 */
public record ThermometersView(List<ThermometerView> thermometers) {
  /** All of a home. */
  public static ThermometersView of(Wetside wetside) {
    return new ThermometersView(
        wetside.keepThermometers().all().stream().map(ThermometerView::of).toList());
  }
}
