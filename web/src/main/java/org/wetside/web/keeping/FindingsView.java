package org.wetside.web.keeping;

import java.util.List;
import org.wetside.app.keeping.Findings;

/**
 * What a check found.
 *
 * @param file the database
 * @param version of its tables
 * @param older whether it is of an older version: then a copy was brought up to date and checked
 * @param clean whether nothing is wrong
 * @param runs how many runs were folded
 * @param events how many events that were
 * @param bottles how many bottles' books were folded
 * @param rolls how many rolls were read
 * @param faults what is wrong
 */
public record FindingsView(
    String file,
    int version,
    boolean older,
    boolean clean,
    int runs,
    long events,
    int bottles,
    int rolls,
    List<FaultView> faults) {
  /** Keeps an unmodifiable copy. */
  public FindingsView {
    faults = List.copyOf(faults);
  }

  /**
   * Something that is not as it must be.
   *
   * @param where the thing
   * @param what what is wrong with it
   */
  public record FaultView(String where, String what) {}

  /** Of a check. */
  public static FindingsView of(Findings findings) {
    return new FindingsView(
        findings.file().toString(),
        findings.version(),
        findings.older(),
        findings.clean(),
        findings.runs(),
        findings.events(),
        findings.bottles(),
        findings.rolls(),
        findings.faults().stream()
            .map(fault -> new FaultView(fault.where(), fault.what()))
            .toList());
  }

  /** For people. */
  public String sentence() {
    String looked =
        "file, "
            + count(runs, "run")
            + " of "
            + count(events, "event")
            + ", "
            + count(bottles, "bottle")
            + ", "
            + count(rolls, "roll");
    return clean
        ? "Nothing is wrong: " + looked + "."
        : count(faults.size(), "fault") + " in: " + looked + ".";
  }

  private static String count(long number, String thing) {
    return number + " " + thing + (number == 1 ? "" : "s");
  }
}
