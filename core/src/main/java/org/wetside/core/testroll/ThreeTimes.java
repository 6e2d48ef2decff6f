package org.wetside.core.testroll;

import java.time.Duration;
import org.wetside.core.quantity.BadValueException;

/**
 * The times that the three pieces of a test roll are developed for.
 *
 * @param shortest of the first piece; at least {@link #LEAST}
 * @param middle of the second, longer than the first
 * @param longest of the third, longer than the second
 */
public record ThreeTimes(Duration shortest, Duration middle, Duration longest) {
  /** Below this the pouring in and out is too large a part of the time; common practice. */
  public static final Duration LEAST = Duration.ofMinutes(3);

  /**
   * From piece to piece; about the square root of two, so that the longest is twice the shortest.
   */
  private static final double RATIO = 1.4;

  private static final long ROUNDED_TO_SECONDS = 15;

  /**
   * Checks their order.
   *
   * @throws BadValueException naming the time that is too short or out of order
   */
  public ThreeTimes {
    if (shortest.compareTo(LEAST) < 0) {
      throw new BadValueException(
          "shortest time",
          shortest.toSeconds() + " s",
          "a piece is developed for at least " + LEAST.toSeconds() + " s");
    }
    longer("middle time", middle, shortest);
    longer("longest time", longest, middle);
  }

  /**
   * Spread about the middle one by 1.4 either way, to the nearest 15 s.
   *
   * @throws BadValueException when the shortest would fall under {@link #LEAST}
   */
  public static ThreeTimes around(Duration middle) {
    double seconds = middle.toSeconds();
    return new ThreeTimes(rounded(seconds / RATIO), middle, rounded(seconds * RATIO));
  }

  /**
   * The time of a piece.
   *
   * @param piece 1 to 3
   * @throws BadValueException for another
   */
  public Duration of(int piece) {
    return switch (piece) {
      case 1 -> shortest;
      case 2 -> middle;
      case 3 -> longest;
      default ->
          throw new BadValueException(
              "piece", String.valueOf(piece), "a roll is cut into pieces 1 to 3");
    };
  }

  private static Duration rounded(double seconds) {
    return Duration.ofSeconds(Math.round(seconds / ROUNDED_TO_SECONDS) * ROUNDED_TO_SECONDS);
  }

  private static void longer(String thing, Duration time, Duration before) {
    if (time.compareTo(before) <= 0) {
      throw new BadValueException(
          thing, time.toSeconds() + " s", "it must be longer than " + before.toSeconds() + " s");
    }
  }
}
