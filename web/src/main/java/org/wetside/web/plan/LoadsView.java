package org.wetside.web.plan;

import java.util.List;
import org.wetside.app.Wetside;

/**
 * Loads that are planned or at the Bench.
 *
 * @param loads in the order they were made
 */
public record LoadsView(List<LoadView> loads) {
  /** Those of a home. */
  public static LoadsView of(Wetside wetside) {
    return new LoadsView(
        wetside.listLoads().open().stream().map(load -> LoadView.of(wetside, load)).toList());
  }
}
