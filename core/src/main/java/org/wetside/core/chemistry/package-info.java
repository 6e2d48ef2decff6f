/**
 * Baths mixed from salts: what a salt is made of, what one stands in for another by, how much of
 * each a volume takes, and whether the balance at hand can weigh it.
 *
 * <p>Enters: formulas, substances, printed factors, the volume wanted, what is in the cupboard, the
 * step of the balance. Leaves: a {@link org.wetside.core.chemistry.MixingPlan}. Open {@link
 * org.wetside.core.chemistry.MixingPlan} first; {@link org.wetside.core.chemistry.Composition}
 * reads chemical formulas.
 */
@NullMarked
package org.wetside.core.chemistry;

import org.jspecify.annotations.NullMarked;
