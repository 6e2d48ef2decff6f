package org.wetside.core.run;

import java.time.Duration;
import java.util.Optional;

/**
 * What is recorded of one step.
 *
 * @param pour the pour began
 * @param full the tank was full
 * @param drain the drain began
 * @param extra how much longer than planned it shall last; negative when cut short
 * @param dosed how long it lasts by its development dose, {@code extra} included; empty when no
 *     reading moves it
 */
public record StepMarks(
    Optional<Mark> pour,
    Optional<Mark> full,
    Optional<Mark> drain,
    Duration extra,
    Optional<Duration> dosed) {
  static final StepMarks NONE =
      new StepMarks(
          Optional.empty(), Optional.empty(), Optional.empty(), Duration.ZERO, Optional.empty());

  StepMarks withPour(Mark mark) {
    return new StepMarks(Optional.of(mark), full, drain, extra, dosed);
  }

  StepMarks withFull(Mark mark) {
    return new StepMarks(pour, Optional.of(mark), drain, extra, dosed);
  }

  StepMarks withDrain(Mark mark) {
    return new StepMarks(pour, full, Optional.of(mark), extra, dosed);
  }

  StepMarks withExtra(Duration changed) {
    return new StepMarks(pour, full, drain, changed, dosed);
  }

  StepMarks withDosed(Optional<Duration> lasts) {
    return new StepMarks(pour, full, drain, extra, lasts);
  }

  /** Without what nobody pressed after the pour: it will come again at its new moment. */
  StepMarks withoutPlannedAfterPour() {
    return new StepMarks(
        pour, full.filter(Mark::pressed), drain.filter(Mark::pressed), extra, dosed);
  }

  StepMarks withoutPlannedDrain() {
    return new StepMarks(pour, full, drain.filter(Mark::pressed), extra, dosed);
  }
}
