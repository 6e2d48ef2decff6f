package org.wetside.core.bath;

import org.wetside.core.quantity.BadValueException;

/**
 * An amount of film counted the makers' way: their "roll" is 80 square inches (source CH-S32,
 * CH-S31), which 135-36 and 120 count as one.
 *
 * @param rolls units of 80 in², at least 0
 */
public record UnitOfUse(double rolls) implements Comparable<UnitOfUse> {
  /** 80 in² in square centimetres: 80 × 2.54². */
  private static final double CM2_PER_ROLL = 80 * 2.54 * 2.54;

  /** No film. */
  public static final UnitOfUse NONE = new UnitOfUse(0);

  /** One roll of 135-36 or 120. */
  public static final UnitOfUse ONE_ROLL = new UnitOfUse(1);

  public UnitOfUse {
    if (!(rolls >= 0) || Double.isInfinite(rolls)) {
      throw new BadValueException("amount of film", rolls + " rolls", "it must be at least 0");
    }
    rolls += 0.0;
  }

  /** From a count of the makers' rolls. */
  public static UnitOfUse ofRolls(double rolls) {
    return new UnitOfUse(rolls);
  }

  /** From an area, one side, in square centimetres. */
  public static UnitOfUse ofSquareCentimetres(double area) {
    return new UnitOfUse(area / CM2_PER_ROLL);
  }

  /**
   * A cassette of 135: 36 frames count 1, 24 frames 0.75; others lie on the straight line through
   * both, which allows for leader and trailer.
   *
   * @param frames 1 to 72
   */
  public static UnitOfUse of135(int frames) {
    if (frames < 1 || frames > 72) {
      throw new BadValueException("frames of a 135 cassette", frames + "", "1 to 72");
    }
    return new UnitOfUse(0.25 + frames / 48.0);
  }

  /** A sheet by its nominal size in millimetres. */
  public static UnitOfUse ofSheet(double widthMillimetres, double heightMillimetres) {
    return ofSquareCentimetres(widthMillimetres * heightMillimetres / 100.0);
  }

  /** The area of it, one side, in square centimetres. */
  public double squareCentimetres() {
    return rolls * CM2_PER_ROLL;
  }

  /** The sum. */
  public UnitOfUse plus(UnitOfUse other) {
    return new UnitOfUse(rolls + other.rolls);
  }

  /** Scaled by a dimensionless factor of at least 0. */
  public UnitOfUse times(double factor) {
    return new UnitOfUse(rolls * factor);
  }

  @Override
  public int compareTo(UnitOfUse other) {
    return Double.compare(rolls, other.rolls);
  }
}
