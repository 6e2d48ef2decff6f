package org.wetside.core.chemistry;

import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Standing;

/**
 * A syringe or a graduate.
 *
 * @param name for example {@code syringe of 10 mL}
 * @param capacity what it holds up to its last mark, above 0
 * @param division between two marks, above 0 and at most the capacity
 * @param standing how this is known
 */
public record Measure(String name, Volume capacity, Volume division, Standing standing) {
  /** Refuses what cannot be read. */
  public Measure {
    if (capacity.millilitres() <= 0) {
      throw new BadValueException("measure", capacity.toString(), "it must hold more than 0 mL");
    }
    if (division.millilitres() <= 0 || division.compareTo(capacity) > 0) {
      throw new BadValueException(
          "division of the measure",
          division.toString(),
          "it must be more than 0 mL and at most its " + capacity);
    }
  }

  /**
   * Reads what somebody has: capacity and division, for example {@code 100mL/1mL}.
   *
   * @throws BadValueException when it is neither
   */
  public static Measure parse(String text) {
    String[] parts = text.split("/", -1);
    if (parts.length != 2) {
      throw new BadValueException(
          "measure", text, "write what it holds and its division, for example 100mL/1mL");
    }
    Volume capacity = Volume.parse(parts[0]);
    return new Measure(
        "your measure of " + capacity, capacity, Volume.parse(parts[1]), Standing.MEASURED);
  }
}
