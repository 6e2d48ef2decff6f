/** Formulas and batches over a real server. */
@NullMarked
package org.wetside.web.formula;

import org.jspecify.annotations.NullMarked;
