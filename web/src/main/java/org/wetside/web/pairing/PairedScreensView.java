package org.wetside.web.pairing;

import java.util.List;
import org.wetside.app.Wetside;

/**
 * The screens that are let in over the network.
 *
 * @param screens the one seen last first
 */
public record PairedScreensView(List<PairedScreenView> screens) {
  /** All of a home. */
  public static PairedScreensView of(Wetside wetside) {
    return new PairedScreensView(
        wetside.findScreens().all().stream().map(PairedScreenView::of).toList());
  }
}
