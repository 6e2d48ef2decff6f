package org.wetside.app.density;

import java.util.List;
import java.util.Optional;
import org.wetside.core.instrument.Calibration;
import org.wetside.core.instrument.Drift;
import org.wetside.core.instrument.Instrument;

/**
 * An instrument with its history.
 *
 * @param instrument what it is
 * @param calibrations the newest first
 */
public record KnownInstrument(Instrument instrument, List<Calibration> calibrations) {
  /** Keeps an unmodifiable copy. */
  public KnownInstrument {
    calibrations = List.copyOf(calibrations);
  }

  /** The one that counts now. */
  public Optional<Calibration> newest() {
    return calibrations.stream().findFirst();
  }

  /** How far a calibration moved against the one before it; empty for the first. */
  public Optional<Drift> drift(int number) {
    return number + 1 < calibrations.size()
        ? Optional.of(Drift.between(calibrations.get(number + 1), calibrations.get(number)))
        : Optional.empty();
  }
}
