package org.wetside.web.density;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.density.ConvertPatches;
import org.wetside.app.density.ConvertWish;
import org.wetside.app.density.PatchDensities;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.sensitometry.Flare;
import org.wetside.core.sensitometry.NegativeKind;

/**
 * Patches whose densities are asked for.
 *
 * @param patches what was measured
 * @param negative {@code silver} when it is not said; stained and colour are refused
 * @param flareShare light from the clear surround, 0 to below 1; none when it is not said
 * @param opaque label of a patch that lets no light through, to find the flare from; not found when
 *     it is not said
 */
public record DensitiesBody(
    @Nullable List<MeansBody> patches,
    @Nullable String negative,
    @Nullable Double flareShare,
    @Nullable String opaque) {
  /** Asks an instrument. */
  public PatchDensities by(ConvertPatches convert, String instrument) {
    return convert.of(
        (patches == null ? List.<MeansBody>of() : patches)
            .stream().map(MeansBody::measured).toList(),
        wish(instrument));
  }

  private ConvertWish wish(String instrument) {
    if (flareShare != null && opaque != null) {
      throw new BadValueException(
          "flare", flareShare + " and patch " + opaque, "say the one or the other");
    }
    return new ConvertWish(
        instrument,
        negative == null || negative.isBlank()
            ? NegativeKind.SILVER
            : ConvertPatches.kind(negative),
        flareShare == null ? Optional.empty() : Optional.of(new Flare(flareShare)),
        Optional.ofNullable(opaque));
  }
}
