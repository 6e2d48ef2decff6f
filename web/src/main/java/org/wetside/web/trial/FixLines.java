package org.wetside.web.trial;

import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.shelf.Clearing;
import org.wetside.core.shelf.FixingTime;
import org.wetside.core.trial.ClipWish;
import org.wetside.core.trial.Trial;
import org.wetside.core.trial.TrialOutcome;
import org.wetside.reference.Capacities;

/** How long to fix after a clearing test: for ordinary film, and for what takes longer. */
final class FixLines {
  private FixLines() {}

  /**
   * Both times, at the temperature of the clip; none when it failed. A time that cannot be compared
   * says nothing of the fixer's state and still how long film takes in it.
   */
  static List<TestView.FixView> of(Trial trial) {
    Optional<ClipWish> clip = trial.clip();
    if (clip.isEmpty() || trial.end().isEmpty()) {
      return List.of();
    }
    TrialOutcome outcome = trial.end().get().outcome();
    if (!(outcome instanceof TrialOutcome.Passed)
        && !(outcome instanceof TrialOutcome.BaselineMade)
        && !(outcome instanceof TrialOutcome.NotComparable)) {
      return List.of();
    }
    Clearing last =
        new Clearing(
            trial.end().get().took(),
            clip.get().film(),
            clip.get().dilution(),
            clip.get().temperature(),
            clip.get().fresh());
    return List.of(line(last, false), line(last, true));
  }

  private static TestView.FixView line(Clearing last, boolean tabular) {
    double times = Capacities.fixingTimes(tabular);
    FixingTime time = FixingTime.after(last, times, last.temperature());
    return new TestView.FixView(
        TimeSpan.toSeconds(time.time()),
        times,
        (int) times
            + " × the clearing time"
            + (tabular ? ", for tabular grain, and for any film in TF-3" : ""),
        Capacities.fixingTimesStanding(tabular).word(),
        Capacities.fixingTimesSource(tabular).toString());
  }
}
