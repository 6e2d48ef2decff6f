package org.wetside.core.quantity;

/**
 * The index a film was exposed at, on the arithmetic scale.
 *
 * @param isoArithmetic arithmetic value, above 0, at most 102,400
 */
public record ExposureIndex(double isoArithmetic) implements Comparable<ExposureIndex> {
  private static final double HIGHEST = 102_400;

  public ExposureIndex {
    isoArithmetic = Finite.requireAbove(isoArithmetic, 0, "exposure index", "(arithmetic)");
    if (isoArithmetic > HIGHEST) {
      throw new BadValueException(
          "exposure index", Finite.plain(isoArithmetic), "it must be at most 102400");
    }
  }

  /** From the arithmetic value, for example 400. */
  public static ExposureIndex of(double isoArithmetic) {
    return new ExposureIndex(isoArithmetic);
  }

  /**
   * Reads {@code 400}, {@code EI 400}, {@code @400}, and what {@link #toString} prints.
   *
   * @throws BadValueException when it is not a number above 0
   */
  public static ExposureIndex parse(String text) {
    String bare = text.strip().replaceFirst("^(?i)(ei|@)\\s*", "");
    Written written = Written.parse("exposure index", bare, "400");
    if (!written.unit().isEmpty()) {
      throw new BadValueException(
          "exposure index", text, "write the number alone, for example 400");
    }
    return of(written.number());
  }

  /** How many stops of push lead from this index to the other; negative for a pull. */
  public Stops stopsTo(ExposureIndex other) {
    return Stops.of(Math.log(other.isoArithmetic / isoArithmetic) / Math.log(2));
  }

  @Override
  public int compareTo(ExposureIndex other) {
    return Double.compare(isoArithmetic, other.isoArithmetic);
  }

  /** For example {@code EI 400}; reads back by {@link #parse}. */
  @Override
  public String toString() {
    return "EI " + Finite.plain(isoArithmetic);
  }
}
