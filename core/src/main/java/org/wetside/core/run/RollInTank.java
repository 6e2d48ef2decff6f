package org.wetside.core.run;

import org.wetside.core.bath.UnitOfUse;

/**
 * A roll at its place in the tank.
 *
 * @param number the roll
 * @param film film and index, for example {@code TRI-X 400 at 400}
 * @param position from the bottom, 1 first
 * @param place where it is, in words
 * @param amount how much film it is
 */
public record RollInTank(
    String number, String film, int position, String place, UnitOfUse amount) {}
