/**
 * One roll of film cut into three pieces and developed for three times, to measure a film at home.
 *
 * <p>Enters: the frames on the roll, the middle time. Leaves: where to cut, the three times. Open
 * {@link org.wetside.core.testroll.ThreeTimes} first.
 */
@NullMarked
package org.wetside.core.testroll;

import org.jspecify.annotations.NullMarked;
