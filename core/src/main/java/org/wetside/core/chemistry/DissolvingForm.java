package org.wetside.core.chemistry;

import java.util.Optional;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * The form something is sold in, as far as it matters for dissolving it.
 *
 * @param name for example {@code crystal that cools}
 * @param liquid whether it is poured and not weighed
 * @param water how warm the water should be; empty when it does not matter
 * @param advice what happens and what to do
 * @param citation where this is read
 * @param standing how it is known
 */
public record DissolvingForm(
    String name,
    boolean liquid,
    Optional<TemperatureRange> water,
    String advice,
    Citation citation,
    Standing standing) {}
