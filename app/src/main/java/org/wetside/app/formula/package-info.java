/**
 * Baths mixed from formulas, as a person does it: find one, weigh it out for a volume, keep one's
 * own, mix a batch step by step and put it into a bottle.
 *
 * <p>Enters: names, volumes, what is in the cupboard, what the balance showed. Leaves: a plan with
 * the cautions of each step, and batches that are kept. Open {@link
 * org.wetside.app.formula.WeighOut} first.
 */
@NullMarked
package org.wetside.app.formula;

import org.jspecify.annotations.NullMarked;
