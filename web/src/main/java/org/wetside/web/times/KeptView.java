package org.wetside.web.times;

import java.util.List;
import org.wetside.app.times.KeepOutcome;
import org.wetside.app.times.RowProblem;
import org.wetside.app.times.TimeWords;
import org.wetside.core.development.TimeEntry;
import org.wetside.core.quantity.BadValueException;

/**
 * What was kept.
 *
 * @param kept how many times
 * @param alreadyThere how many were on file already
 * @param ids their ids
 * @param entries each in one line
 */
public record KeptView(int kept, int alreadyThere, List<String> ids, List<String> entries) {
  /**
   * The view of an outcome.
   *
   * @throws BadValueException when nothing was kept, with every problem on a line of its own
   */
  public static KeptView of(String what, KeepOutcome outcome) {
    if (outcome instanceof KeepOutcome.Refused refused) {
      List<String> lines = refused.problems().stream().map(RowProblem::text).toList();
      String nothing =
          lines.size() == 1
              ? "nothing was kept. " + lines.get(0)
              : "nothing was kept; " + lines.size() + " problems:\n  " + String.join("\n  ", lines);
      throw new BadValueException(
          what, lines.size() == 1 ? "1 row" : lines.size() + " places", nothing);
    }
    KeepOutcome.Kept kept = (KeepOutcome.Kept) outcome;
    return new KeptView(
        kept.entries().size(),
        kept.alreadyThere(),
        kept.entries().stream().map(TimeEntry::id).toList(),
        kept.entries().stream()
            .map(entry -> entry.filmCode() + ": " + TimeWords.of(entry))
            .toList());
  }
}
