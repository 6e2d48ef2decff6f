package org.wetside.core.plan;

import java.util.Collection;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetside.core.quantity.BadValueException;

/**
 * The number a roll is filed under, for example {@code TM-01}, or by year {@code 26-001}. Two that
 * differ only in capitals are the same.
 */
public final class RollNumber {
  private static final Pattern FORM = Pattern.compile("[\\p{L}\\p{N}]+([-._][\\p{L}\\p{N}]+)*");
  private static final Pattern BY_YEAR = Pattern.compile("(\\d{2})-(\\d{3,})");
  private static final Pattern SERIES = Pattern.compile("(.*\\p{L}.*?)(\\d{1,9})");
  private static final int MOST = 24;

  private RollNumber() {}

  /**
   * The number as written.
   *
   * @throws BadValueException when it could not stand on a sleeve or in an address
   */
  public static String require(String text) {
    String bare = text.strip();
    if (bare.length() > MOST || !FORM.matcher(bare).matches()) {
      throw new BadValueException(
          "roll number",
          bare,
          "letters and digits, parted by single - . or _, at most " + MOST + " characters");
    }
    return bare;
  }

  /** Whether the word looks like a roll number: it has a hyphen and a digit. */
  static boolean looksLike(String word) {
    return word.length() <= MOST
        && word.indexOf('-') > 0
        && word.chars().anyMatch(Character::isDigit)
        && FORM.matcher(word).matches();
  }

  /**
   * The next number of a year.
   *
   * @param year full year, for example 2026
   * @param taken numbers that exist
   */
  public static String next(int year, Collection<String> taken) {
    String yearDigits = String.format(Locale.ROOT, "%02d", year % 100);
    int highest = 0;
    for (String number : taken) {
      Matcher matcher = BY_YEAR.matcher(number);
      if (matcher.matches() && matcher.group(1).equals(yearDigits)) {
        highest = Math.max(highest, Integer.parseInt(matcher.group(2)));
      }
    }
    return String.format(Locale.ROOT, "%s-%03d", yearDigits, highest + 1);
  }

  /**
   * The number after one that was given: {@code TM-06} after {@code TM-05}, whatever else was given
   * in that series; where the owner has no series of letters, the next of the year.
   *
   * @param last the number given last; empty for the first roll
   * @param year full year, for example 2026
   * @param taken numbers that exist
   */
  public static String following(String last, int year, Collection<String> taken) {
    Matcher series = SERIES.matcher(last);
    if (!series.matches()) {
      return next(year, taken);
    }
    String prefix = series.group(1);
    int width = series.group(2).length();
    long highest = Long.parseLong(series.group(2));
    for (String number : taken) {
      Matcher other = SERIES.matcher(number);
      if (other.matches() && other.group(1).equalsIgnoreCase(prefix)) {
        highest = Math.max(highest, Long.parseLong(other.group(2)));
      }
    }
    return require(prefix + String.format(Locale.ROOT, "%0" + width + "d", highest + 1));
  }
}
