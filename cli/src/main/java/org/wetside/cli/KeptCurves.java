package org.wetside.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.web.curves.CurveView;
import org.wetside.web.strip.ReadStripView;
import org.wetside.web.strip.StripView;
import org.wetside.web.strip.StripsView;

/**
 * What {@code wetside curves} shows.
 *
 * @param curves the strips on file, or the one that was asked for
 * @param shows what that one's curve shows; null for a list
 * @param claim how much may be claimed of it, where a scanner or camera read it; else empty
 */
record KeptCurves(List<StripView> curves, @Nullable CurveView shows, String claim) {
  static KeptCurves all(StripsView view) {
    return new KeptCurves(view.curves(), null, "");
  }

  static KeptCurves one(ReadStripView view) {
    return new KeptCurves(List.of(view.strip()), view.curve(), view.claim());
  }
}
