/**
 * Learning from negatives: judged rolls, what they say together, and factors that are accepted.
 *
 * <p>Enters: a roll with what was seen on it. Leaves: the factor of each film in each developer
 * with its band, the control chart, and, once accepted, a factor that every time is multiplied by.
 * Open {@link org.wetside.app.learning.Learning} first.
 */
@NullMarked
package org.wetside.app.learning;

import org.jspecify.annotations.NullMarked;
