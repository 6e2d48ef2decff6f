package org.wetside.app.density;

import java.util.List;
import java.util.OptionalDouble;
import org.wetside.core.instrument.Calibration;
import org.wetside.core.instrument.PatchDensity;

/**
 * Densities of patches.
 *
 * @param calibration by which they were read
 * @param densest of its usable steps [-]: nothing denser is read
 * @param patches in the order in which they were asked for
 * @param base density of the patch called base [-]; empty when there is none that was read
 * @param flare what was done about flare, in a sentence; empty when nobody asked
 */
public record PatchDensities(
    Calibration calibration,
    double densest,
    List<Patch> patches,
    OptionalDouble base,
    String flare) {
  /** Label of the patch of clear film, base plus fog. */
  public static final String BASE = "base";

  /** Keeps an unmodifiable copy. */
  public PatchDensities {
    patches = List.copyOf(patches);
  }

  /**
   * One patch.
   *
   * @param label what it is called
   * @param density gross, or why there is none
   */
  public record Patch(String label, PatchDensity density) {}

  /** Density above the base [-]; empty when either was not read. */
  public OptionalDouble net(Patch patch) {
    return base.isPresent() && patch.density() instanceof PatchDensity.Read read
        ? OptionalDouble.of(read.density() - base.getAsDouble())
        : OptionalDouble.empty();
  }
}
