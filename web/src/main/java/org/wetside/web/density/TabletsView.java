package org.wetside.web.density;

import java.util.List;
import org.wetside.app.density.KeepTablets;

/**
 * The step tablets.
 *
 * @param tablets by name
 */
public record TabletsView(List<TabletView> tablets) {
  /** All of a home. */
  public static TabletsView of(KeepTablets tablets) {
    return new TabletsView(tablets.all().stream().map(TabletView::of).toList());
  }
}
