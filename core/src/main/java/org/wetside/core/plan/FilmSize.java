package org.wetside.core.plan;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.quantity.BadValueException;

/** The size of film in the drawer: which reel it needs and how much liquid it uses up. */
public enum FilmSize {
  /** Perforated 35 mm film in a cassette. */
  SMALL("135", FilmFormat.SMALL, 72),
  /** 120 roll film. */
  MEDIUM("120", FilmFormat.MEDIUM, 20),
  /** 220 roll film: twice the length of 120. */
  LONG_MEDIUM("220", FilmFormat.MEDIUM, 40),
  /** Sheets of 4 × 5 inches. */
  SHEET_4X5("4x5", FilmFormat.SHEET, 100),
  /** Sheets of 5 × 7 inches. */
  SHEET_5X7("5x7", FilmFormat.SHEET, 100),
  /** Sheets of 8 × 10 inches. */
  SHEET_8X10("8x10", FilmFormat.SHEET, 100);

  private static final double MILLIMETRES_PER_INCH = 25.4;

  private final String word;
  private final FilmFormat format;
  private final int mostFrames;

  FilmSize(String word, FilmFormat format, int mostFrames) {
    this.word = word;
    this.format = format;
    this.mostFrames = mostFrames;
  }

  /** The word shown, stored and read by {@link #find}. */
  public String word() {
    return word;
  }

  /** The format that a printed time is looked up for. */
  public FilmFormat format() {
    return format;
  }

  /**
   * How much film it is.
   *
   * @param frames frames of a 135 cassette, or number of sheets; empty counts as 36 or one
   */
  public UnitOfUse amount(Optional<Integer> frames) {
    return switch (this) {
      case SMALL -> UnitOfUse.of135(frames.orElse(36));
      case MEDIUM -> UnitOfUse.ONE_ROLL;
      case LONG_MEDIUM -> UnitOfUse.ofRolls(2);
      case SHEET_4X5 -> sheets(4, 5, frames);
      case SHEET_5X7 -> sheets(5, 7, frames);
      case SHEET_8X10 -> sheets(8, 10, frames);
    };
  }

  /**
   * The same count of frames.
   *
   * @throws BadValueException when there cannot be so many
   */
  public int requireFrames(int frames) {
    if (frames < 1 || frames > mostFrames) {
      throw new BadValueException(
          "frames", String.valueOf(frames), word + " takes 1 to " + mostFrames);
    }
    return frames;
  }

  /** Reads {@link #word()} and {@code 35mm}; empty for anything else. */
  public static Optional<FilmSize> find(String text) {
    String bare = text.strip().toLowerCase(Locale.ROOT).replace('×', 'x');
    if (bare.equals("35mm")) {
      return Optional.of(SMALL);
    }
    return Arrays.stream(values()).filter(size -> size.word.equals(bare)).findFirst();
  }

  /**
   * Reads what {@link #find} reads.
   *
   * @throws BadValueException for anything else, with the list
   */
  public static FilmSize parse(String text) {
    return find(text).orElseThrow(() -> new BadValueException("format", text.strip(), choices()));
  }

  static String choices() {
    return "write one of "
        + Arrays.stream(values()).map(FilmSize::word).collect(Collectors.joining(", "));
  }

  private static UnitOfUse sheets(double width, double height, Optional<Integer> count) {
    return UnitOfUse.ofSheet(width * MILLIMETRES_PER_INCH, height * MILLIMETRES_PER_INCH)
        .times(count.orElse(1));
  }
}
