package org.wetside.web.wash;

import java.util.List;
import org.wetside.app.wash.ForeseeWash;
import org.wetside.app.wash.WashWish;
import org.wetside.core.quantity.Units;

/**
 * Every way to wash on file, for one tank and its film.
 *
 * @param washes the one that takes little water first
 */
public record WashesView(List<WashView> washes) {
  /** Foresees all of them, the sentences in those units. */
  public static WashesView of(WashWish wish, Units units) {
    return new WashesView(
        new ForeseeWash().all(wish).stream().map(answer -> WashView.of(answer, units)).toList());
  }
}
