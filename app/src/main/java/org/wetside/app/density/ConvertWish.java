package org.wetside.app.density;

import java.util.Optional;
import org.wetside.core.sensitometry.Flare;
import org.wetside.core.sensitometry.NegativeKind;

/**
 * How measures become densities.
 *
 * @param instrument whose newest calibration is used
 * @param negative what the negative is made of; only silver is read
 * @param flare light from the clear surround; empty when none is corrected, or it is found
 * @param opaque label of the patch that lets no light through, which flare is found from; empty
 *     when it is not to be found
 */
public record ConvertWish(
    String instrument, NegativeKind negative, Optional<Flare> flare, Optional<String> opaque) {
  /** Flare is known, or nothing is done about it. */
  public ConvertWish(String instrument, NegativeKind negative, Optional<Flare> flare) {
    this(instrument, negative, flare, Optional.empty());
  }
}
