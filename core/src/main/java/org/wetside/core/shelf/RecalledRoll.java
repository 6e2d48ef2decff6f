package org.wetside.core.shelf;

import java.time.Instant;

/**
 * A roll that is to be fixed again, and where to find it.
 *
 * @param bottleId identity of the bottle it was fixed in
 * @param roll its number; empty when the ledger did not name it
 * @param film what it is
 * @param bottle letter of that bottle
 * @param contents what that held
 * @param run the run; may be empty
 * @param fixedAt when
 * @param sleeve where the negatives are; may be empty
 * @param owner whose they are; may be empty
 * @param title what the roll is called; may be empty
 */
public record RecalledRoll(
    long bottleId,
    String roll,
    String film,
    String bottle,
    String contents,
    String run,
    Instant fixedAt,
    String sleeve,
    String owner,
    String title) {}
