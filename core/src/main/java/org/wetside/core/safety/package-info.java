/**
 * What must never meet, and what should not meet without a rinse between.
 *
 * <p>Enters: things by name with what they are ({@link org.wetside.core.safety.Material}) and the
 * rules on file, each with its source. Leaves: objections that name both things, the reason and the
 * source. Open {@link org.wetside.core.safety.Combinations} first.
 */
@NullMarked
package org.wetside.core.safety;

import org.jspecify.annotations.NullMarked;
