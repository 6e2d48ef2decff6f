package org.wetside.core.chemistry;

import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * How strong something is kept as a solution when a balance cannot weigh the little that is wanted.
 *
 * @param percent grams in 100 mL, above 0
 * @param note whose choice the figure is
 * @param citation where such solutions are known from
 * @param standing how the figure is known; a strength that was chosen is never computed
 */
public record SolutionStrength(double percent, String note, Citation citation, Standing standing) {}
