package org.wetside.core.shelf;

import org.wetside.core.quantity.Volume;

/**
 * A line as it stands in a ledger.
 *
 * @param id what pages of a ledger are asked for by; later lines have larger ones
 * @param line the line
 * @param left what was in the bottle after it
 */
public record PostedLine(long id, LedgerLine line, Volume left) {}
