package org.wetside.web.bench;

import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.app.times.AskRate;
import org.wetside.core.development.ContrastEffect;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.run.Placement;
import org.wetside.core.run.RunDose;
import org.wetside.core.thermal.DevelopmentDose;

/**
 * What the development came to.
 *
 * @param plannedSeconds the time it was to have at the planned temperature
 * @param reachedSeconds the time at the planned temperature that it is worth
 * @param notKnownSeconds how much of it lay outside the temperatures at which the developer's rate
 *     is known
 * @param standing how the rate is known
 * @param source where the rate is from
 * @param contrast what that did to contrast; null where no printed series says
 */
public record DoseReachedView(
    double plannedSeconds,
    double reachedSeconds,
    double notKnownSeconds,
    String standing,
    String source,
    @Nullable ContrastView contrast) {
  /**
   * Contrast, as planned and as reached.
   *
   * @param measure what contrast means here
   * @param planned at the planned time
   * @param reached at the time the development was worth
   * @param source where the series stands
   */
  public record ContrastView(String measure, double planned, double reached, String source) {
    static ContrastView of(ContrastEffect effect) {
      return new ContrastView(
          effect.measure(), effect.planned(), effect.reached(), effect.citation().sourceId());
    }
  }

  /** Of the developer; null when its rate is not known or no reading was taken of it. */
  static @Nullable DoseReachedView of(BenchSnapshot at, AskRate printed) {
    for (int step = 0; step <= at.state().current(); step++) {
      if (at.state().plan().step(step).kind() != StepKind.DEVELOPER) {
        continue;
      }
      Optional<DevelopmentDose> dose = RunDose.of(at.state(), step);
      if (dose.isPresent()) {
        return of(at, step, dose.get(), printed);
      }
    }
    return null;
  }

  private static DoseReachedView of(
      BenchSnapshot at, int step, DevelopmentDose dose, AskRate printed) {
    Placement.Moments moments = at.moments().steps().get(step);
    Duration lasted = Duration.between(moments.full(), moments.end());
    Duration planned =
        at.state()
            .plan()
            .step(step)
            .duration()
            .orElse(Duration.ZERO)
            .plus(at.state().steps().get(step).extra());
    Duration reached = dose.reached(lasted);
    String film =
        at.card().rolls().isEmpty()
            ? ""
            : at.card().rolls().get(0).film().replaceFirst(" at \\d+$", "");
    return new DoseReachedView(
        TimeSpan.toSeconds(planned),
        TimeSpan.toSeconds(reached),
        TimeSpan.toSeconds(dose.notKnown(lasted)),
        dose.rate().standing().word(),
        dose.rate().source(),
        printed
            .contrast(film, at.card().developer(), at.card().dilution(), planned, reached)
            .map(ContrastView::of)
            .orElse(null));
  }
}
