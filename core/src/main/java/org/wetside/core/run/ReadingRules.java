package org.wetside.core.run;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureDifference;
import org.wetside.core.quantity.TemperatureRange;

/** Whether a temperature can be one of a bath. */
final class ReadingRules {
  private static final TemperatureRange POSSIBLE =
      new TemperatureRange(Temperature.ofCelsius(-5), Temperature.ofCelsius(60));
  private static final int MOST_MOVED_PERCENT = 15;
  private static final TemperatureDifference SURPRISING = TemperatureDifference.ofKelvins(5);

  private ReadingRules() {}

  static Outcome taken(RunState state, RunEvent event, Happening.ReadingTaken reading) {
    if (!state.plan().has(event.step())) {
      return Judge.noSuchStep(state, event.step());
    }
    if (!POSSIBLE.contains(reading.raw()) || !POSSIBLE.contains(reading.corrected())) {
      return new Outcome.Refused(
          "bath temperature " + reading.raw() + " is refused: between -5 and 60 °C");
    }
    if (reading.confirmed()) {
      return new Outcome.Applied();
    }
    Outcome moves = movesFar(state, event);
    if (moves instanceof Outcome.Asks) {
      return moves;
    }
    List<RunEvent> events = state.applied();
    for (int i = events.size() - 1; i >= 0; i--) {
      RunEvent earlier = events.get(i);
      if (earlier.step() == event.step() && earlier.what() instanceof Happening.ReadingTaken last) {
        return surprising(reading, last.corrected(), "the last reading, " + last.raw());
      }
    }
    return state
        .plan()
        .dose()
        .filter(basis -> state.plan().step(event.step()).kind() == StepKind.DEVELOPER)
        .map(basis -> basis.rate().reference())
        .map(planned -> surprising(reading, planned, "the plan's " + planned))
        .orElseGet(Outcome.Applied::new);
  }

  /** One reading moves the end of a developer a little; more than that was perhaps read wrong. */
  private static Outcome movesFar(RunState state, RunEvent event) {
    Optional<Duration> moved = RunDose.lasts(state, event.step(), List.of(event));
    boolean done = state.steps().get(event.step()).drain().isPresent();
    if (moved.isEmpty() || done) {
      return new Outcome.Applied();
    }
    Duration planned = state.plan().step(event.step()).duration().orElse(Duration.ZERO);
    Duration by = moved.get().minus(Placement.lasts(state, event.step()));
    boolean far = by.abs().compareTo(planned.multipliedBy(MOST_MOVED_PERCENT).dividedBy(100)) > 0;
    return far
        ? new Outcome.Asks(
            "This reading moves the end by "
                + (by.isNegative() ? "-" : "+")
                + Spoken.clock(by.abs())
                + ", more than "
                + MOST_MOVED_PERCENT
                + " % of the development. Keep it?")
        : new Outcome.Applied();
  }

  private static Outcome surprising(
      Happening.ReadingTaken now, Temperature expected, String whose) {
    boolean far = now.corrected().minus(expected).abs().compareTo(SURPRISING) > 0;
    return far
        ? new Outcome.Asks(now.raw() + " is more than 5 K from " + whose + ". Keep it?")
        : new Outcome.Applied();
  }
}
