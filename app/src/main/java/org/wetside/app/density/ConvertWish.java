package org.wetside.app.density;

import java.util.Optional;
import org.wetside.core.sensitometry.Flare;
import org.wetside.core.sensitometry.NegativeKind;

/**
 * How measures become densities.
 *
 * @param instrument whose newest calibration is used
 * @param negative what the negative is made of; only silver is read
 * @param flare light from the clear surround; empty when none is corrected
 */
public record ConvertWish(String instrument, NegativeKind negative, Optional<Flare> flare) {}
