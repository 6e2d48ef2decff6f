package org.wetside.core.run;

import java.util.List;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureDifference;
import org.wetside.core.quantity.TemperatureRange;

/** Whether a temperature can be one of a bath. */
final class ReadingRules {
  private static final TemperatureRange POSSIBLE =
      new TemperatureRange(Temperature.ofCelsius(-5), Temperature.ofCelsius(60));
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
    List<RunEvent> events = state.applied();
    for (int i = events.size() - 1; i >= 0; i--) {
      RunEvent earlier = events.get(i);
      if (earlier.step() == event.step() && earlier.what() instanceof Happening.ReadingTaken last) {
        return surprising(reading, last);
      }
    }
    return new Outcome.Applied();
  }

  private static Outcome surprising(Happening.ReadingTaken now, Happening.ReadingTaken last) {
    boolean far = now.corrected().minus(last.corrected()).abs().compareTo(SURPRISING) > 0;
    return far
        ? new Outcome.Asks(
            now.raw() + " is more than 5 K from the last reading, " + last.raw() + ". Keep it?")
        : new Outcome.Applied();
  }
}
