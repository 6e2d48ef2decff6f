package org.wetside.core.trial;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * One step of a test.
 *
 * @param number its place, from 1
 * @param moment when it is done
 * @param words what is done
 * @param left how long it is left, where the step says so
 * @param handles chemicals that are handled in it, for their cautions; {@link #CONTENTS} is
 *     whatever is in the bottle
 * @param standing how it is known
 * @param citation where it was read
 * @param note limits; may be empty
 */
public record TrialStep(
    int number,
    StepMoment moment,
    String words,
    Optional<Duration> left,
    List<String> handles,
    Standing standing,
    Citation citation,
    String note) {
  /** Stands for what is in the bottle. */
  public static final String CONTENTS = "*";

  /** Keeps an unmodifiable copy. */
  public TrialStep {
    handles = List.copyOf(handles);
  }
}
