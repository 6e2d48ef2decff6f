package org.wetside.core.shelf;

import java.time.Instant;

/**
 * One line of a bottle's ledger. Lines are added and never changed; a mistake is answered by a
 * correcting line.
 *
 * @param at when it happened
 * @param run the run it belongs to; empty when it was done by hand
 * @param note in words; may be empty
 * @param what what happened
 */
public record LedgerLine(Instant at, String run, String note, BottleEvent what) {
  /** A line written by hand. */
  public static LedgerLine byHand(Instant at, String note, BottleEvent what) {
    return new LedgerLine(at, "", note.strip(), what);
  }
}
