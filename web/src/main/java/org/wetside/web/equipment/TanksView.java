package org.wetside.web.equipment;

import java.util.List;
import org.wetside.app.Wetside;

/**
 * Tanks.
 *
 * @param tanks the largest last
 */
public record TanksView(List<TankView> tanks) {
  /** All of a home. */
  public static TanksView of(Wetside wetside) {
    return new TanksView(
        wetside.keepTanks().all().stream().map(tank -> TankView.of(wetside, tank)).toList());
  }
}
