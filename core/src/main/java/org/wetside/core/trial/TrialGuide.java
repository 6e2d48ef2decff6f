package org.wetside.core.trial;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * How a test is made.
 *
 * @param kind which test
 * @param steps in order; at least one starts the clock
 */
public record TrialGuide(TrialKind kind, List<TrialStep> steps) {
  /** Keeps an unmodifiable copy. */
  public TrialGuide {
    steps = List.copyOf(steps);
    if (steps.stream().noneMatch(step -> step.moment() == StepMoment.START)) {
      throw new IllegalArgumentException("no step starts the clock of " + kind.word());
    }
  }

  /** The steps of one moment, in order. */
  public List<TrialStep> at(StepMoment moment) {
    return steps.stream().filter(step -> step.moment() == moment).toList();
  }

  /** How long it has to be left before it may be judged; empty when the eye decides. */
  public Optional<Duration> leftFor() {
    return steps.stream().map(TrialStep::left).flatMap(Optional::stream).findFirst();
  }
}
