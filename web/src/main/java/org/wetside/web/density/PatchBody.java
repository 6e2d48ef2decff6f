package org.wetside.web.density;

import org.jspecify.annotations.Nullable;
import org.wetside.core.instrument.PatchRectangle;

/**
 * A rectangle of a picture, in pixels.
 *
 * @param label what it is called; {@code base} for clear film
 * @param x from the left edge
 * @param y from the upper edge
 * @param width at least 1
 * @param height at least 1
 */
public record PatchBody(@Nullable String label, int x, int y, int width, int height) {
  /** The rectangle. */
  public PatchRectangle rectangle() {
    return new PatchRectangle(label == null ? "" : label, x, y, width, height);
  }
}
