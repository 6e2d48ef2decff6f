package org.wetside.core.development;

import java.time.Duration;
import java.util.List;
import org.wetside.core.source.Standing;

/** What is known about a time: an estimate, or that there is no honest one. */
public sealed interface TimeAnswer permits TimeAnswer.Estimate, TimeAnswer.NoHonestTime {
  /**
   * A time to believe.
   *
   * @param question what was asked
   * @param headline the candidate taken
   * @param benchLnSd standard deviation at this user's bench, in ln(time) [-]
   * @param others the other candidates, narrowest first
   * @param disagreements those of them from another source whose bands do not touch the headline's
   * @param warnings what one must know beside it
   */
  record Estimate(
      TimeQuestion question,
      Candidate headline,
      double benchLnSd,
      List<Candidate> others,
      List<Candidate> disagreements,
      List<TimeWarning> warnings)
      implements TimeAnswer {
    public Estimate {
      others = List.copyOf(others);
      disagreements = List.copyOf(disagreements);
      warnings = List.copyOf(warnings);
    }

    /** The time. */
    public Duration time() {
      return headline.time();
    }

    /** Steps from the entry to the time. */
    public List<BasisStep> basis() {
      return headline.steps();
    }

    /** Standing of the weakest step. */
    public Standing standing() {
      return headline.standing();
    }

    /** Nine in ten, of what the source says at its conditions. */
    public Band band() {
      return headline.band();
    }

    /** Nine in ten, at this user's bench. */
    public Band benchBand() {
      return Band.around(org.wetside.core.quantity.TimeSpan.toSeconds(headline.time()), benchLnSd);
    }
  }

  /**
   * No time is invented.
   *
   * @param question what was asked
   * @param reasons why not, most telling first
   * @param nearest the entries that come closest
   * @param plan how to find the time with a piece of film
   */
  record NoHonestTime(
      TimeQuestion question, List<Refusal> reasons, List<TimeEntry> nearest, ClipTestPlan plan)
      implements TimeAnswer {
    public NoHonestTime {
      reasons = List.copyOf(reasons);
      nearest = List.copyOf(nearest);
    }
  }
}
