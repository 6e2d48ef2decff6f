package org.wetside.app.trial;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.Clearing;
import org.wetside.core.trial.ClearingRule;
import org.wetside.core.trial.ClipWish;
import org.wetside.core.trial.Sighting;
import org.wetside.core.trial.Trial;
import org.wetside.core.trial.TrialOutcome;
import org.wetside.reference.TestGuides;

/**
 * What is said of a test.
 *
 * @param outcome what came of it
 * @param clearing the clearing time, when a clip has cleared
 */
record Judgement(TrialOutcome outcome, Optional<Clearing> clearing) {

  /**
   * Judges what was seen.
   *
   * @param took how long it ran
   * @param bottle its bottle; empty for a test of film
   * @throws BadValueException when it is judged before its time, or the time cannot be
   */
  static Judgement of(Trial trial, Duration took, Sighting seen, Optional<Bottle> bottle) {
    Optional<Duration> least = TestGuides.open().of(trial.kind()).leftFor();
    if (seen == Sighting.GOOD && least.isPresent() && took.compareTo(least.get()) < 0) {
      throw new BadValueException(
          "time of the drop",
          took.toSeconds() + " s",
          "it is left for " + least.get().toSeconds() + " s before nothing is said to be left");
    }
    Optional<ClipWish> clip = trial.clip();
    if (clip.isEmpty()) {
      return new Judgement(
          seen == Sighting.GOOD
              ? new TrialOutcome.Passed(OptionalDouble.empty())
              : new TrialOutcome.Failed(OptionalDouble.empty()),
          Optional.empty());
    }
    Optional<Clearing> baseline =
        bottle.flatMap(known -> known.state().baseline()).flatMap(test -> test.what().clearing());
    Clearing taken = taken(clip.get(), took);
    return seen == Sighting.GOOD
        ? new Judgement(
            ClearingRule.cleared(taken, baseline, bottle.filter(Judgement::used).isPresent()),
            Optional.of(taken))
        : new Judgement(ClearingRule.notClear(taken, baseline), Optional.empty());
  }

  /** A clip that cleared, and was thought bad all the same. */
  static Judgement thoughtBad(ClipWish clip, Duration took) {
    return new Judgement(
        new TrialOutcome.Failed(OptionalDouble.empty()), Optional.of(taken(clip, took)));
  }

  private static boolean used(Bottle bottle) {
    return bottle.state().film().rolls() > 0;
  }

  private static Clearing taken(ClipWish clip, Duration took) {
    return new Clearing(took, clip.film(), clip.dilution(), clip.temperature(), clip.fresh());
  }
}
