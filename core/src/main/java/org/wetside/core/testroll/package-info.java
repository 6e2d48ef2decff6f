/**
 * One roll of film cut into three pieces and developed for three times, to measure a film at home.
 *
 * <p>Enters: what a meter says, what the camera can be set to, the middle time. Leaves: every frame
 * with its setting, where to cut, the three times; or how much more or less light is needed. Open
 * {@link org.wetside.core.testroll.RollPlan} first.
 */
@NullMarked
package org.wetside.core.testroll;

import org.jspecify.annotations.NullMarked;
