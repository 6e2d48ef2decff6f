package org.wetside.web.strip;

import java.util.List;
import org.wetside.app.times.KeepOutcome;
import org.wetside.app.times.RowProblem;
import org.wetside.core.development.TimeEntry;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.TimeSpan;

/**
 * What became of a measured time.
 *
 * @param kept what was put among the times now
 * @param alreadyThere whether the same stood there already
 */
public record MeasuredTimeView(List<KeptTime> kept, boolean alreadyThere) {

  /**
   * A time on file.
   *
   * @param id for withdrawing it
   * @param minutes rounded to 5 s
   * @param contrast aimed at, in words
   * @param source the curves it was measured by
   * @param standing measured
   */
  public record KeptTime(
      String id, double minutes, String contrast, String source, String standing) {
    static KeptTime of(TimeEntry entry) {
      return new KeptTime(
          entry.id(),
          Digits.minutes(TimeSpan.toSeconds(entry.time())),
          entry.contrast(),
          entry.citation().sourceId(),
          entry.standing().word());
    }
  }

  /**
   * The view of an outcome.
   *
   * @throws BadValueException when nothing was kept
   */
  static MeasuredTimeView of(KeepOutcome outcome) {
    if (outcome instanceof KeepOutcome.Refused refused) {
      throw new BadValueException(
          "measured time",
          "not kept",
          String.join("; ", refused.problems().stream().map(RowProblem::text).toList()));
    }
    KeepOutcome.Kept kept = (KeepOutcome.Kept) outcome;
    return new MeasuredTimeView(
        kept.entries().stream().map(KeptTime::of).toList(), kept.alreadyThere() > 0);
  }
}
