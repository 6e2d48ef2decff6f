/**
 * The closed family of physical quantities used in every public signature, one canonical unit each.
 *
 * <p>Enters: numbers with a named unit, or text such as {@code 68F}. Leaves: immutable values that
 * know only physical limits; whether a value is wise is a rule elsewhere. Open {@link
 * org.wetside.core.quantity.Temperature} first.
 */
@NullMarked
package org.wetside.core.quantity;

import org.jspecify.annotations.NullMarked;
