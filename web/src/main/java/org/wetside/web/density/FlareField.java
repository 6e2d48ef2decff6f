package org.wetside.web.density;

import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.BadValueException;

/**
 * Flare as it is typed in one field: a share of the light, or the label of a patch that lets no
 * light through.
 *
 * @param share 0 to below 1; null when none was typed
 * @param opaque label of that patch; null when none was typed
 */
public record FlareField(@Nullable Double share, @Nullable String opaque) {
  /** What that means, wherever the field stands. */
  public static final String HINT =
      "a share of the light, 0.005, or the label of a patch that lets no light through; empty: none"
          + " is taken off";

  /**
   * Reads it.
   *
   * @throws BadValueException when it begins like a number and is none
   */
  public static FlareField parse(@Nullable String typed) {
    String bare = typed == null ? "" : typed.strip();
    if (bare.isEmpty()) {
      return new FlareField(null, null);
    }
    try {
      return new FlareField((Double) Double.parseDouble(bare), null);
    } catch (NumberFormatException notOne) {
      if (bare.matches("[0-9.+-].*")) {
        throw new BadValueException(
            "flare", bare, "a share of the light, for example 0.005 (decimal mark: a point)");
      }
      return new FlareField(null, bare);
    }
  }
}
