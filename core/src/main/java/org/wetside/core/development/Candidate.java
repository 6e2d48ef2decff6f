package org.wetside.core.development;

import java.time.Duration;
import java.util.List;
import org.wetside.core.source.Standing;

/**
 * A time that one entry leads to.
 *
 * @param entry where it starts
 * @param time the time at the asked conditions
 * @param lnSd total standard deviation in ln(time) [-]
 * @param steps how it came about, the entry first
 */
public record Candidate(TimeEntry entry, Duration time, double lnSd, List<BasisStep> steps) {
  public Candidate {
    steps = List.copyOf(steps);
  }

  /** The standing of the weakest step. */
  public Standing standing() {
    Standing weakest = entry.standing();
    for (BasisStep step : steps) {
      weakest = weakest.weaker(step.standing());
    }
    return weakest;
  }

  /** What the source says at its conditions, nine in ten. */
  public Band band() {
    return Band.around(org.wetside.core.quantity.TimeSpan.toSeconds(time), lnSd);
  }
}
