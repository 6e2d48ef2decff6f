/**
 * How long to develop: films, developers, published and own times, and the estimate for conditions
 * nobody printed.
 *
 * <p>Enters: cited entries and a question (film, developer, dilution, exposure index, temperature,
 * tank). Leaves: an answer with the steps that led to it, its standing and its bands, or the reason
 * why there is no honest time. Open {@link org.wetside.core.development.TimeEstimator} first.
 */
@NullMarked
package org.wetside.core.development;

import org.jspecify.annotations.NullMarked;
