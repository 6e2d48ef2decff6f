package org.wetside.core.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A dilution in parts, written 1+n: one part of concentrate and n parts of water.
 *
 * @param concentrateParts parts of concentrate or stock, above 0
 * @param waterParts parts of water, at least 0
 */
public record DilutionRatio(double concentrateParts, double waterParts) implements Dilution {
  private static final String PARTS = "(\\d+(?:\\.\\d+)?)";
  private static final Pattern PLUS =
      Pattern.compile("\\s*" + PARTS + "\\s*\\+\\s*" + PARTS + "\\s*");
  private static final Pattern COLON =
      Pattern.compile("\\s*" + PARTS + "\\s*:\\s*" + PARTS + "\\s*");

  public DilutionRatio {
    concentrateParts = Finite.requireAbove(concentrateParts, 0, "parts of concentrate", "parts");
    waterParts = Finite.requireAtLeast(waterParts, 0, "parts of water", "parts");
  }

  /** From parts of concentrate and parts of water. */
  public static DilutionRatio ofParts(double concentrateParts, double waterParts) {
    return new DilutionRatio(concentrateParts, waterParts);
  }

  /**
   * Reads {@code 1+31}.
   *
   * @throws BadValueException for {@code 1:31}, which has two readings in the trade; the message
   *     asks which
   */
  public static DilutionRatio parse(String text) {
    Matcher plus = PLUS.matcher(text);
    if (plus.matches()) {
      return ofParts(Double.parseDouble(plus.group(1)), Double.parseDouble(plus.group(2)));
    }
    Matcher colon = COLON.matcher(text);
    if (colon.matches()) {
      throw new BadValueException(
          "dilution",
          text.strip(),
          which(Double.parseDouble(colon.group(1)), Double.parseDouble(colon.group(2))));
    }
    throw new BadValueException(
        "dilution",
        text.strip(),
        "write it as parts, for example 1+31, or stock, or the maker's letter");
  }

  private static String which(double first, double second) {
    String parts = Finite.plain(first) + " part" + (first == 1 ? "" : "s");
    String question =
        "is "
            + parts
            + " plus "
            + Finite.plain(second)
            + " of water meant (write "
            + Finite.plain(first)
            + "+"
            + Finite.plain(second)
            + ")";
    if (second <= first) {
      return question + "?";
    }
    return question
        + ", or "
        + parts
        + " in "
        + Finite.plain(second)
        + " of the whole (write "
        + Finite.plain(first)
        + "+"
        + Finite.plain(second - first)
        + ")?";
  }

  /** Concentrate and water together, in parts. */
  public double totalParts() {
    return concentrateParts + waterParts;
  }

  /** Parts of water for one part of concentrate. */
  public double waterPerConcentrate() {
    return waterParts / concentrateParts;
  }

  /** How much concentrate a total of working solution holds. */
  public Volume concentrateIn(Volume total) {
    return total.times(concentrateParts / totalParts());
  }

  @Override
  public Optional<DilutionRatio> ratio() {
    return Optional.of(this);
  }

  @Override
  public String label() {
    return Finite.plain(concentrateParts) + "+" + Finite.plain(waterParts);
  }

  /** For example {@code 1+31}; reads back by {@link #parse}. */
  @Override
  public String toString() {
    return label();
  }
}
