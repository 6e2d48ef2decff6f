package org.wetside.app.times;

import java.util.List;
import org.wetside.core.development.TimeEntry;

/** What became of typed times: all kept, or none. */
public sealed interface KeepOutcome permits KeepOutcome.Kept, KeepOutcome.Refused {
  /**
   * All are kept.
   *
   * @param entries what was kept now, with their ids
   * @param alreadyThere how many were on file already, the same in everything
   */
  record Kept(List<TimeEntry> entries, int alreadyThere) implements KeepOutcome {
    public Kept {
      entries = List.copyOf(entries);
    }
  }

  /**
   * Nothing was kept.
   *
   * @param problems every row that stands in the way
   */
  record Refused(List<RowProblem> problems) implements KeepOutcome {
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}
