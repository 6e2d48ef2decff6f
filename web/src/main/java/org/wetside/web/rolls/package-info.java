/**
 * Rolls as the pages and the interface show them, and {@code /api/rolls}.
 *
 * <p>Enters: rolls as JSON or lines. Leaves: view records, the same that the command line prints.
 * Open {@link org.wetside.web.rolls.RollView} first.
 */
@NullMarked
package org.wetside.web.rolls;

import org.jspecify.annotations.NullMarked;
