/**
 * Judging negatives and what is learned from them: a form on the page of a roll, the page of
 * learned factors with its control chart, and the same over HTTP.
 *
 * <p>Enters: what was seen on a roll. Leaves: pages and views. Open {@link
 * org.wetside.web.learning.LearningRoutes} and {@link org.wetside.web.learning.JudgeRoutes} first.
 */
@NullMarked
package org.wetside.web.learning;

import org.jspecify.annotations.NullMarked;
