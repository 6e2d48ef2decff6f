/**
 * What is looked at before the first pour: the tank as it is closed, temperatures, bottles, stock,
 * and whether a precious roll may go in.
 *
 * <p>Enters: a load or an opened run, with what the shelf, the drawer and earlier runs know.
 * Leaves: checks, each open, done by what is known, or a warning with advice. Open {@link
 * org.wetside.app.checks.BeforePour} first.
 */
@NullMarked
package org.wetside.app.checks;

import org.jspecify.annotations.NullMarked;
