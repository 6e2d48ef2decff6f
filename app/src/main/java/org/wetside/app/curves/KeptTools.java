package org.wetside.app.curves;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.app.density.Densitometry;
import org.wetside.app.density.KnownInstrument;
import org.wetside.core.instrument.Calibration;
import org.wetside.core.instrument.StepTablet;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.OpticalDensity;
import org.wetside.core.strip.StripReading;

/**
 * The step tablets and instruments that are written down, for strips that were made with them.
 *
 * @param densitometry where they are; empty where none can be named
 */
record KeptTools(Optional<Densitometry> densitometry) {
  /** What densities may be off by being written with three digits. */
  private static final double ROUNDING = 0.0005;

  /**
   * The tablet of that name.
   *
   * @throws BadValueException when there is none
   */
  StepTablet tablet(String name) {
    return densitometry
        .flatMap(all -> all.keepTablets().find(name))
        .orElseThrow(
            () ->
                new BadValueException(
                    "tablet", name, "there is none of that name; write it down first"));
  }

  /**
   * Its densities, for steps counted from 1.
   *
   * @throws BadValueException when its steps are called otherwise
   */
  static List<OpticalDensity> steps(StepTablet tablet) {
    List<OpticalDensity> densities = new ArrayList<>();
    for (int i = 0; i < tablet.steps().size(); i++) {
      if (!tablet.steps().get(i).label().equals(String.valueOf(i + 1))) {
        throw new BadValueException(
            "tablet",
            tablet.name(),
            "its steps are not called 1, 2, 3 …: choose none, and type its densities in their"
                + " order");
      }
      densities.add(tablet.steps().get(i).density());
    }
    return densities;
  }

  /**
   * An instrument with the calibration it reads by.
   *
   * @param known the instrument
   * @param calibration the one of a day, or the newest; empty for a densitometer never checked
   */
  record Reader(KnownInstrument known, Optional<Calibration> calibration) {
    /**
     * The same by the calibration of a day.
     *
     * @throws BadValueException naming the days there are, when that is none of them
     */
    Reader on(LocalDate day) {
      Optional<Calibration> then =
          known.calibrations().stream().filter(one -> one.on().equals(day)).findFirst();
      if (then.isEmpty()) {
        throw new BadValueException(
            "day of the calibration",
            day.toString(),
            known.instrument().name()
                + (known.calibrations().isEmpty()
                    ? " was never calibrated"
                    : " was calibrated on "
                        + String.join(
                            ", ",
                            known.calibrations().stream()
                                .map(one -> one.on().toString())
                                .distinct()
                                .toList())
                        + "; leave the day empty for the newest"));
      }
      return new Reader(known, then);
    }

    /**
     * Refuses what a scanner or camera cannot have read. What a densitometer shows stands.
     *
     * @throws BadValueException naming every reading beyond the densest usable step
     */
    void check(List<StripReading> readings) {
      if (!known.instrument().kind().seesPixels() || calibration.isEmpty()) {
        return;
      }
      double densest = calibration.get().scale().densest();
      List<String> beyond =
          readings.stream()
              .map(one -> one.density().value())
              .filter(density -> density > densest + ROUNDING)
              .distinct()
              .map(String::valueOf)
              .toList();
      if (!beyond.isEmpty()) {
        throw new BadValueException(
            "densities",
            String.join(", ", beyond),
            known.instrument().name()
                + ", calibrated "
                + calibration.get().on()
                + ", reads nothing denser than "
                + densest
                + ": leave them out, or calibrate it by a denser tablet");
      }
    }
  }

  /**
   * The instrument of that name, by its newest calibration.
   *
   * @throws BadValueException when there is none, or it sees pixels and was never calibrated
   */
  Reader reader(String name) {
    KnownInstrument known =
        densitometry
            .flatMap(all -> all.keepInstruments().find(name))
            .orElseThrow(
                () ->
                    new BadValueException(
                        "instrument", name, "there is none of that name; write it down first"));
    if (known.instrument().kind().seesPixels() && known.newest().isEmpty()) {
      throw new BadValueException("instrument", name, "calibrate it by a tablet first");
    }
    return new Reader(known, known.newest());
  }
}
