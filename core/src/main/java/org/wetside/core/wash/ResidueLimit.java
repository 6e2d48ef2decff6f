package org.wetside.core.wash;

import org.wetside.core.quantity.ArealMass;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * How much thiosulfate washed film may keep.
 *
 * @param name what it is called and for which film
 * @param most on one side
 * @param citation where it is printed
 * @param standing how it is known
 */
public record ResidueLimit(String name, ArealMass most, Citation citation, Standing standing) {}
