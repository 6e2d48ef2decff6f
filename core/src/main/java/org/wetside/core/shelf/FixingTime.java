package org.wetside.core.shelf;

import java.time.Duration;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;

/**
 * How long to fix next.
 *
 * @param time how long, rounded up to a second
 * @param times how many times the clearing time that is: 2, or 3 where a source says so
 * @param colder what a bath below 20 °C adds as a factor, at least 1
 * @param at temperature at which it will be fixed, 0 to 50 °C
 */
public record FixingTime(Duration time, double times, double colder, Temperature at) {
  /** At which a fixing time is said when nobody says a temperature. */
  public static final Temperature USUAL = Temperature.ofCelsius(20);

  private static final double FROM_C = 20;
  private static final double WARMEST_C = 50;
  private static final double DOUBLES_EVERY_K = 10;

  /**
   * After the last clearing time (CH-S01, CH-S07; three times for tabular-grain film and some
   * fixers: CH-S31, CH-S38). A bath below 20 °C that is colder than the clip was takes longer:
   * twice as long for each 10 K (rule of the kinetics file, RL29).
   *
   * @param times 2, or 3 where a source says so
   * @param bath temperature at which it will be fixed, 0 to 50 °C
   * @throws BadValueException when no fixer is so cold or warm
   */
  public static FixingTime after(Clearing last, double times, Temperature bath) {
    if (bath.celsius() < 0 || bath.celsius() > WARMEST_C) {
      throw new BadValueException("temperature of the fixer", bath.toString(), "0 to 50 °C");
    }
    double from = Math.min(FROM_C, last.temperature().celsius());
    double to = Math.min(FROM_C, bath.celsius());
    double colder = Math.max(1, Math.pow(2, (from - to) / DOUBLES_EVERY_K));
    double seconds = last.seconds() * times * colder;
    return new FixingTime(
        Duration.ofSeconds((long) Math.ceil(seconds - 1e-9)), times, colder, bath);
  }
}
