package org.wetside.app.curves;

import java.util.Locale;
import java.util.stream.Collectors;
import org.wetside.app.NoAnswerException;
import org.wetside.app.times.AddTime;
import org.wetside.app.times.KeepOutcome;
import org.wetside.app.times.OwnLine;
import org.wetside.core.development.TimeEntry;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.sensitometry.ContrastTime;
import org.wetside.core.sensitometry.TimeForN;
import org.wetside.core.strip.FilmStrip;

/** Puts a time that a family of strips shows among the user's own times, as measured. */
public final class KeepMeasuredTime {
  /** Nobody develops more exactly than this. */
  private static final int ROUNDED_TO_SECONDS = 5;

  private final AddTime times;

  /** Into these times. */
  public KeepMeasuredTime(AddTime times) {
    this.times = times;
  }

  /**
   * Keeps the time for N + {@code n}, rounded to 5 s.
   *
   * @param n −2 to +2
   * @param index exposure index it is for, as typed; blank for none
   * @throws NoAnswerException when the family does not reach that contrast
   * @throws BadValueException when n is none of these
   */
  public KeepOutcome keep(FamilyAnswer family, int n, String index) {
    TimeForN wanted =
        family.times().stream()
            .filter(one -> one.n() == n)
            .findFirst()
            .orElseThrow(
                () -> new BadValueException("N", String.valueOf(n), "from -2 to +2, whole steps"));
    ContrastTime time =
        wanted
            .time()
            .orElseThrow(
                () ->
                    new NoAnswerException(
                        words(n)
                            + ": the curves do not reach a contrast of "
                            + two(wanted.gradient())
                            + "; nothing is read beyond them"));
    FilmStrip film = family.members().get(0).kept().strip();
    return times.add(
        new OwnLine(
            film.film(),
            film.developer(),
            film.dilution() instanceof Dilution.Unknown ? "" : film.dilution().label(),
            index.strip(),
            film.temperature().map(KeepMeasuredTime::typed).orElse(""),
            clock(rounded(time.seconds())),
            film.vessel().word(),
            "",
            family.aim().measure().words() + " " + two(wanted.gradient()) + ", " + words(n),
            TimeEntry.MEASURED_SOURCE
                + ", curves "
                + family.members().stream()
                    .map(one -> String.valueOf(one.kept().id()))
                    .collect(Collectors.joining(", "))));
  }

  /** To the 5 s that are kept. */
  public static long rounded(double seconds) {
    return Math.round(seconds / ROUNDED_TO_SECONDS) * ROUNDED_TO_SECONDS;
  }

  /** {@code N}, {@code N+1} or {@code N−2}. */
  public static String words(int n) {
    return n == 0 ? "N" : n > 0 ? "N+" + n : "N−" + -n;
  }

  private static String clock(long seconds) {
    return String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
  }

  private static String two(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  private static String typed(Temperature temperature) {
    double celsius = temperature.celsius();
    return (celsius == Math.rint(celsius) ? String.valueOf((long) celsius) : celsius + "") + "C";
  }
}
