/**
 * Ask for a development time; keep times of one's own.
 *
 * <p>Enters: what a person typed. Leaves: an answer of the estimator with its film and warnings in
 * words, or entries that are kept, or row-exact problems and nothing kept. Open {@link
 * org.wetside.app.times.AskTime} first.
 */
@NullMarked
package org.wetside.app.times;

import org.jspecify.annotations.NullMarked;
