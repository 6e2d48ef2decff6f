/**
 * One roll of film cut into three pieces and developed for three times, to measure a film at home.
 *
 * <p>Enters: the middle time. Leaves: the three times to develop for. Open {@link
 * org.wetside.core.testroll.ThreeTimes} first.
 */
@NullMarked
package org.wetside.core.testroll;

import org.jspecify.annotations.NullMarked;
