package org.wetside.web.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.run.DoseBasis;
import org.wetside.core.run.Placement;
import org.wetside.core.run.RunDose;
import org.wetside.core.thermal.DevelopmentDose;
import org.wetside.core.thermal.TimedReading;

/**
 * The development dose of a developer, drawn from points so that a screen needs no server between
 * them.
 *
 * @param betaPerK how much faster the developer works per kelvin, as a natural logarithm
 * @param lowC coldest temperature at which that is known
 * @param highC warmest temperature at which that is known
 * @param standing how it is known
 * @param source where it is from
 * @param notKnownSeconds time outside that span, which counts as planned
 * @param movedByLastReadingSeconds how far the last reading moved the end
 * @param reached share of the development over time; empty before the first reading
 * @param temperatures of the bath, as read and as expected; empty before the first reading
 */
public record DoseView(
    double betaPerK,
    double lowC,
    double highC,
    String standing,
    String source,
    double notKnownSeconds,
    double movedByLastReadingSeconds,
    List<ReachedView> reached,
    List<WarmthView> temperatures) {
  private static final int POINTS = 40;

  /** Share of the development at a moment: 0 when the tank is full, 1 when it is complete. */
  public record ReachedView(String at, double share) {}

  /**
   * A point of the bath's temperature.
   *
   * @param at when
   * @param celsius how warm
   * @param read whether it was read, or follows from what was
   */
  public record WarmthView(String at, double celsius, boolean read) {}

  static @Nullable DoseView of(BenchSnapshot at, int step) {
    Optional<DoseBasis> basis = at.state().plan().dose();
    if (basis.isEmpty() || at.state().plan().step(step).kind() != StepKind.DEVELOPER) {
      return null;
    }
    Placement.Moments moments = at.moments().steps().get(step);
    Duration whole = Duration.between(moments.full(), moments.end());
    Optional<DevelopmentDose> dose = RunDose.of(at.state(), step);
    return new DoseView(
        basis.get().rate().betaPerKelvin(),
        basis.get().rate().span().low().celsius(),
        basis.get().rate().span().high().celsius(),
        basis.get().rate().standing().word(),
        basis.get().rate().source(),
        dose.map(known -> TimeSpan.toSeconds(known.notKnown(whole))).orElse(0.0),
        TimeSpan.toSeconds(RunDose.movedByLast(at.state(), step)),
        dose.map(known -> reached(at, step, moments.full(), whole, known)).orElse(List.of()),
        dose.map(known -> temperatures(moments.full(), whole, known)).orElse(List.of()));
  }

  private static List<ReachedView> reached(
      BenchSnapshot at, int step, Instant full, Duration whole, DevelopmentDose dose) {
    double planned =
        TimeSpan.toSeconds(
            at.state()
                .plan()
                .step(step)
                .duration()
                .orElse(whole)
                .plus(at.state().steps().get(step).extra()));
    List<ReachedView> points = new ArrayList<>();
    for (int i = 0; i <= POINTS; i++) {
      Duration elapsed = whole.multipliedBy(i).dividedBy(POINTS);
      points.add(
          new ReachedView(
              Instants.text(full.plus(elapsed)),
              TimeSpan.toSeconds(dose.reached(elapsed)) / planned));
    }
    return points;
  }

  private static List<WarmthView> temperatures(Instant full, Duration whole, DevelopmentDose dose) {
    List<WarmthView> points = new ArrayList<>();
    Duration last = Duration.ZERO;
    for (TimedReading one : dose.curve().known()) {
      last = one.elapsed();
      points.add(
          new WarmthView(
              Instants.text(full.plus(last)),
              one.temperature().celsius(),
              !one.elapsed().isZero()));
    }
    Duration left = whole.minus(last);
    for (int i = 1; i <= POINTS && !left.isNegative(); i++) {
      Duration then = last.plus(left.multipliedBy(i).dividedBy(POINTS));
      points.add(
          new WarmthView(
              Instants.text(full.plus(then)),
              dose.curve().at(TimeSpan.toSeconds(then)).celsius(),
              false));
    }
    return points;
  }
}
