package org.wetside.core.thermal;

import java.time.Duration;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.TimeSpan;

/**
 * How a bath left alone goes towards its surroundings: T(t) = Ta + (T0 − Ta)·e^(−t/τ).
 *
 * @param surroundings Ta
 * @param timeConstant τ, above 0; must be measured, no table gives it
 */
public record Drift(Temperature surroundings, Duration timeConstant) {
  public Drift {
    if (timeConstant.isNegative() || timeConstant.isZero()) {
      throw new BadValueException(
          "time constant of the drift", timeConstant.toString(), "it must be above 0 s");
    }
  }

  private double tauSeconds() {
    return TimeSpan.toSeconds(timeConstant);
  }

  /** The temperature after a time, from a start. */
  public Temperature after(Temperature start, Duration elapsed) {
    double away = start.minus(surroundings).kelvins();
    double left = Math.exp(-TimeSpan.toSeconds(elapsed) / tauSeconds());
    return Temperature.ofCelsius(surroundings.celsius() + away * left);
  }

  /** The mean temperature over a stretch that begins and ends that long after the start. */
  public Temperature mean(Temperature start, Duration from, Duration to) {
    if (to.compareTo(from) <= 0) {
      throw new BadValueException(
          "stretch of time", from + " to " + to, "its end must be after its beginning");
    }
    double away = start.minus(surroundings).kelvins();
    double tau = tauSeconds();
    double first = TimeSpan.toSeconds(from);
    double last = TimeSpan.toSeconds(to);
    double integral = tau * Math.exp(-first / tau) * -Math.expm1(-(last - first) / tau);
    return Temperature.ofCelsius(surroundings.celsius() + away * integral / (last - first));
  }

  /** When the bath is in the band. */
  public TimeInBand timeIn(TemperatureRange band, Temperature start) {
    return TimeInBand.of(this, band, start);
  }

  /**
   * How long it takes from the start to a temperature strictly between start and surroundings, in
   * seconds.
   */
  double secondsTo(Temperature start, Temperature wanted) {
    double away = start.minus(surroundings).kelvins();
    double then = wanted.minus(surroundings).kelvins();
    return tauSeconds() * Math.log(away / then);
  }
}
