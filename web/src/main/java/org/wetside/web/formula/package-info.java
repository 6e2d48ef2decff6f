/**
 * Mixing from formulas on pages and over HTTP: the list, one weighed out, batches ticked off, the
 * card to print.
 *
 * <p>Enters: what is asked of a formula and what the balance showed. Leaves: views, the pages under
 * {@code /shelf/formulas}, the routes under {@code /api/formulas} and {@code /api/batches}. Open
 * {@link org.wetside.web.formula.FormulaView} first.
 */
@NullMarked
package org.wetside.web.formula;

import org.jspecify.annotations.NullMarked;
