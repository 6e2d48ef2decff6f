/**
 * Learning from negatives: what a user's own factor on the development time of a film in a
 * developer is, and whether something drifts.
 *
 * <p>Enters: judged rolls, by words on two scales or by the densities of a reference pair. Leaves:
 * a belief in the factor of each film and developer with its band, one in the exposure index, and a
 * control chart. Nothing here is used by itself: a factor counts only once its user has accepted
 * it. Open {@link org.wetside.core.learning.Learned} first, then {@link
 * org.wetside.core.learning.ControlChart}.
 */
@NullMarked
package org.wetside.core.learning;

import org.jspecify.annotations.NullMarked;
