package org.wetside.web.density;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.core.instrument.PatchRectangle;

/**
 * Patches to be measured.
 *
 * @param patches rectangles
 * @param instrument whose calibration turns them into densities; only measured when it is not said
 * @param negative {@code silver} when it is not said; stained and colour are refused
 * @param flareShare light from the clear surround, 0 to below 1; none when it is not said
 * @param opaque label of a patch that lets no light through, to find the flare from; not found when
 *     it is not said
 */
public record PatchesBody(
    @Nullable List<PatchBody> patches,
    @Nullable String instrument,
    @Nullable String negative,
    @Nullable Double flareShare,
    @Nullable String opaque) {
  /** The rectangles. */
  public List<PatchRectangle> rectangles() {
    return patches == null ? List.of() : patches.stream().map(PatchBody::rectangle).toList();
  }
}
