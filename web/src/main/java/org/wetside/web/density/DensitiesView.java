package org.wetside.web.density;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.wetside.app.density.PatchDensities;
import org.wetside.core.instrument.PatchDensity;

/**
 * Densities of patches.
 *
 * @param instrument by which they were read
 * @param calibratedOn day of its calibration
 * @param tablet by which it was calibrated
 * @param densest nothing denser is read, dimensionless
 * @param claim how much is claimed
 * @param flare what was done about flare, in a sentence; empty when nobody asked
 * @param base density of the patch called base, dimensionless; null when there is none
 * @param patches in the order in which they were asked for
 */
public record DensitiesView(
    String instrument,
    String calibratedOn,
    String tablet,
    double densest,
    String claim,
    String flare,
    @Nullable Double base,
    List<DensityView> patches) {
  /**
   * One patch.
   *
   * @param label what it is called
   * @param density gross, dimensionless; null when it was not read
   * @param net above the base, dimensionless; null without one
   * @param notRead why it was not; null when it was
   */
  public record DensityView(
      String label, @Nullable Double density, @Nullable Double net, @Nullable String notRead) {}

  /** The view of densities. */
  public static DensitiesView of(String instrument, PatchDensities densities) {
    return new DensitiesView(
        instrument,
        densities.calibration().on().toString(),
        densities.calibration().tablet(),
        densities.densest(),
        Claim.TEXT,
        densities.flare(),
        rounded(densities.base()),
        densities.patches().stream().map(one -> patch(one, densities)).toList());
  }

  private static DensityView patch(PatchDensities.Patch patch, PatchDensities all) {
    return patch.density() instanceof PatchDensity.Read read
        ? new DensityView(
            patch.label(), Claim.rounded(read.density()), rounded(all.net(patch)), null)
        : new DensityView(
            patch.label(), null, null, ((PatchDensity.NotRead) patch.density()).reason());
  }

  private static @Nullable Double rounded(OptionalDouble value) {
    return value.isPresent() ? Claim.rounded(value.getAsDouble()) : null;
  }

  /** Lines {@code step,density} of all that was read but the base: to be taken over. */
  public String lines() {
    return patches.stream()
        .filter(one -> one.density() != null)
        .filter(one -> !one.label().equalsIgnoreCase(PatchDensities.BASE))
        .map(one -> one.label() + "," + one.density())
        .collect(Collectors.joining("\n", "step,density\n", "\n"));
  }
}
