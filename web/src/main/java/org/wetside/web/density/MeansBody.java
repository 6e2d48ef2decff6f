package org.wetside.web.density;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.density.MeasuredPatch;
import org.wetside.core.instrument.Means;

/**
 * What is known of a patch.
 *
 * @param label what it is called; {@code base} for clear film
 * @param channels mean of grey, or means of red, green and blue, 0 to 65535
 * @param clippedShare part of its pixels at 0 or 65535, 0 to 1; 0 when it is not said
 */
public record MeansBody(
    @Nullable String label, @Nullable List<Double> channels, @Nullable Double clippedShare) {
  /** From a measured patch. */
  public static MeansBody of(MeasuredPatch patch) {
    return new MeansBody(patch.label(), patch.means().channels(), patch.clippedShare());
  }

  /** The patch. */
  public MeasuredPatch measured() {
    return new MeasuredPatch(
        label == null ? "" : label,
        new Means(channels == null ? List.of() : channels),
        clippedShare == null ? 0 : clippedShare);
  }
}
