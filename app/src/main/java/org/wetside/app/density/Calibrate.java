package org.wetside.app.density;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Supplier;
import org.wetside.app.shelf.Today;
import org.wetside.core.instrument.Calibration;
import org.wetside.core.instrument.Instrument;
import org.wetside.core.instrument.SeenStep;
import org.wetside.core.instrument.StepTablet;
import org.wetside.core.quantity.BadValueException;
import org.wetside.store.Calibrations;
import org.wetside.store.Database;
import org.wetside.store.Instruments;
import org.wetside.store.StepTablets;

/** Calibrates an instrument by a step tablet; the newest calibration counts from then on. */
public final class Calibrate {
  private final Supplier<Database> database;
  private final Clock clock;

  Calibrate(Supplier<Database> database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /**
   * What was done.
   *
   * @param instrument its name
   * @param tablet its name
   * @param on the day
   * @param method how values become densities; ignored for a densitometer
   * @param steps lines as {@link SeenLines} reads them
   * @param note settings, light, picture
   */
  public record Wish(
      String instrument,
      String tablet,
      LocalDate on,
      Calibration.Method method,
      String steps,
      String note) {}

  /**
   * Keeps a calibration, or nothing when its steps give none.
   *
   * @throws BadValueException with the reason: unknown instrument, tablet or step, a day to come, a
   *     bad line, too few usable steps, pixels that follow no such law
   */
  public Calibration by(Wish wish) {
    if (wish.on().isAfter(Today.of(clock))) {
      throw new BadValueException(
          "day of the calibration", wish.on().toString(), "not after today, " + Today.of(clock));
    }
    return database
        .get()
        .inTransaction(
            session -> {
              Instrument instrument =
                  new Instruments(session)
                      .find(wish.instrument())
                      .orElseThrow(() -> none("instrument", wish.instrument()));
              StepTablet tablet =
                  new StepTablets(session)
                      .find(wish.tablet())
                      .orElseThrow(() -> none("tablet", wish.tablet()));
              Calibration made = made(wish, instrument, tablet);
              new Calibrations(session).add(instrument.name(), made);
              return made;
            });
  }

  private static Calibration made(Wish wish, Instrument instrument, StepTablet tablet) {
    List<SeenStep> steps =
        SeenLines.parse(wish.steps(), instrument.kind()).stream()
            .map(
                line ->
                    tablet
                        .step(line.label())
                        .map(step -> new SeenStep(step.label(), step.density(), line.seen()))
                        .orElseThrow(
                            () ->
                                new BadValueException(
                                    "step",
                                    line.label(),
                                    "tablet " + tablet.name() + " has no step of that label")))
            .toList();
    Calibration.Method method =
        instrument.kind().seesPixels() ? wish.method() : Calibration.Method.AS_SHOWN;
    Calibration made = new Calibration(wish.on(), tablet.name(), method, steps, wish.note());
    made.scale();
    return made;
  }

  private static BadValueException none(String thing, String name) {
    return new BadValueException(thing, name, "there is none of that name; write it down first");
  }
}
