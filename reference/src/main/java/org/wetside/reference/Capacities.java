package org.wetside.reference;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.Capacity;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/** How much film baths do, how long fixers fix, and how much may be added at once. */
public final class Capacities {
  private static final class Lazy {
    private static final List<ReferenceRow> ROWS = ReferenceTable.open("baths/capacity").rows();
  }

  private Capacities() {}

  /** What is on file for such a bottle; the lesser figure where a source gives two. */
  public static Optional<Capacity> of(BottleLabel label) {
    return BottleRows.of(Lazy.ROWS, label).stream()
        .filter(row -> row.text("unit").equals("rolls/L"))
        .findFirst()
        .map(
            row ->
                new Capacity(
                    row.text("bath"), row.number("least"), row.standing(), row.citation()));
  }

  /** How many clearing times a film is fixed. */
  public static double fixingTimes(boolean tabular) {
    return fixing(tabular).number("least");
  }

  /** Whether a fixer of that name wants the longer of {@link #fixingTimes} for every film. */
  public static boolean fixesSlowly(String contents) {
    return contents.toLowerCase(Locale.ROOT).contains(fixing(true).text("names"));
  }

  /** Where {@link #fixingTimes} stands. */
  public static Citation fixingTimesSource(boolean tabular) {
    return fixing(tabular).citation();
  }

  /** How {@link #fixingTimes} is known. */
  public static Standing fixingTimesStanding(boolean tabular) {
    return fixing(tabular).standing();
  }

  private static ReferenceRow fixing(boolean tabular) {
    return row("fixer", tabular ? "fixing time of tabular-grain film" : "fixing time");
  }

  /** The most of a bath's volume that is replenished at once, as a share. */
  public static double mostAtOnce() {
    return row("replenished bath", "most in one addition").number("least") / 100;
  }

  /** Where {@link #mostAtOnce} stands. */
  public static String mostAtOnceSource() {
    return row("replenished bath", "most in one addition").citation().toString();
  }

  private static ReferenceRow row(String bath, String what) {
    return Lazy.ROWS.stream()
        .filter(row -> row.text("bath").equals(bath) && row.text("what").equals(what))
        .findFirst()
        .orElseThrow();
  }
}
