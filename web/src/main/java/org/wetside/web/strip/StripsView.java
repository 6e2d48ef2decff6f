package org.wetside.web.strip;

import java.util.List;
import org.wetside.app.Wetside;

/**
 * The strips on file, as {@code GET /api/curves} answers.
 *
 * @param curves those of one film and developer together, by rising time
 */
public record StripsView(List<StripView> curves) {
  /** Those of a home. */
  public static StripsView of(Wetside wetside) {
    return new StripsView(
        wetside.sensitometry().keepStrips().all().stream().map(StripView::of).toList());
  }
}
