package org.wetside.core.run;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.thermal.BathCurve;
import org.wetside.core.thermal.DevelopmentDose;
import org.wetside.core.thermal.Drift;
import org.wetside.core.thermal.DriftFit;
import org.wetside.core.thermal.TimedReading;

/**
 * The development dose of a run's developer, from the readings that were taken: before the pour
 * they say how warm the bath is, after it they are points of its curve.
 */
public final class RunDose {
  /** Readings within a shorter time tell more of the thermometer than of the bath. */
  private static final Duration TELLS_A_DRIFT = Duration.ofSeconds(60);

  private RunDose() {}

  /**
   * The dose of a step; empty when it is no developer whose rate is known, or when nobody took a
   * reading of it.
   */
  public static Optional<DevelopmentDose> of(RunState state, int step) {
    return of(state, step, readingsOf(state.applied(), step));
  }

  /** How far the last reading of a step moved its end; zero when there is none. */
  public static Duration movedByLast(RunState state, int step) {
    List<RunEvent> readings = readingsOf(state.applied(), step);
    if (readings.isEmpty()) {
      return Duration.ZERO;
    }
    Duration planned = planned(state, step);
    Duration before =
        of(state, step, readings.subList(0, readings.size() - 1))
            .map(dose -> dose.completeAfter(planned))
            .orElse(planned);
    return of(state, step, readings)
        .map(dose -> dose.completeAfter(planned).minus(before))
        .orElse(Duration.ZERO);
  }

  private static Optional<DevelopmentDose> of(RunState state, int step, List<RunEvent> readings) {
    Optional<DoseBasis> basis = state.plan().dose();
    boolean developer = state.plan().step(step).kind() == StepKind.DEVELOPER;
    if (basis.isEmpty() || !developer || readings.isEmpty()) {
      return Optional.empty();
    }
    Optional<Instant> full = state.steps().get(step).full().map(Mark::at);
    return Optional.of(new DevelopmentDose(basis.get().rate(), curve(state, step, full, readings)));
  }

  /**
   * How long a step lasts when its dose decides; empty when it does not.
   *
   * @param more readings that are not stored yet
   */
  static Optional<Duration> lasts(RunState state, int step, List<RunEvent> more) {
    Duration planned = planned(state, step);
    List<RunEvent> readings = new ArrayList<>(readingsOf(state.applied(), step));
    readings.addAll(readingsOf(more, step));
    return of(state, step, readings)
        .map(dose -> dose.completeAfter(planned))
        .map(exact -> Duration.ofMillis(exact.toMillis()));
  }

  /** What the step was to last at the reference temperature, with what was changed by hand. */
  private static Duration planned(RunState state, int step) {
    Duration time = state.plan().step(step).duration().orElse(Duration.ZERO);
    return time.plus(state.steps().get(step).extra());
  }

  private static List<RunEvent> readingsOf(List<RunEvent> events, int step) {
    return events.stream()
        .filter(event -> event.step() == step)
        .filter(event -> event.what() instanceof Happening.ReadingTaken)
        .toList();
  }

  private static BathCurve curve(
      RunState state, int step, Optional<Instant> full, List<RunEvent> readings) {
    DoseBasis basis = state.plan().dose().orElseThrow();
    Temperature poured = basis.rate().reference();
    List<TimedReading> inTank = new ArrayList<>();
    boolean readBefore = false;
    for (RunEvent event : readings) {
      Temperature read = corrected(event);
      if (full.isEmpty() || !event.occurredAt().isAfter(full.get())) {
        poured = read;
        readBefore = true;
      } else {
        keep(inTank, new TimedReading(Duration.between(full.get(), event.occurredAt()), read));
      }
    }
    Temperature start = readBefore ? basis.inTank(poured, tank(state, step, basis)) : poured;
    List<TimedReading> known = new ArrayList<>(List.of(new TimedReading(Duration.ZERO, start)));
    known.addAll(inTank);
    return new BathCurve(known, drift(inTank, basis.room()));
  }

  /**
   * A reading that came late was put to the moment of the last one before it was stored: it is
   * older than that, and must not stand in its place.
   */
  private static void keep(List<TimedReading> readings, TimedReading one) {
    boolean late =
        readings.stream().anyMatch(other -> other.elapsed().compareTo(one.elapsed()) >= 0);
    if (!late) {
      readings.add(one);
    }
  }

  /** The tank has the temperature of its pre-soak, if that was read, else that of the room. */
  private static Optional<Temperature> tank(RunState state, int step, DoseBasis basis) {
    boolean soaked = step > 0 && state.plan().step(step - 1).kind() == StepKind.PRE_SOAK;
    List<RunEvent> soak = soaked ? readingsOf(state.applied(), step - 1) : List.of();
    return soak.isEmpty() ? basis.room() : Optional.of(corrected(soak.get(soak.size() - 1)));
  }

  private static Optional<Drift> drift(List<TimedReading> inTank, Optional<Temperature> room) {
    if (inTank.size() < 2 || (room.isEmpty() && inTank.size() < 3)) {
      return Optional.empty();
    }
    Duration over = inTank.get(inTank.size() - 1).elapsed().minus(inTank.get(0).elapsed());
    if (over.compareTo(TELLS_A_DRIFT) < 0) {
      return Optional.empty();
    }
    DriftFit fit =
        room.map(known -> DriftFit.withRoom(inTank, known))
            .orElseGet(() -> DriftFit.findingRoom(inTank));
    return fit instanceof DriftFit.Found found ? Optional.of(found.drift()) : Optional.empty();
  }

  private static Temperature corrected(RunEvent event) {
    if (event.what() instanceof Happening.ReadingTaken reading) {
      return reading.corrected();
    }
    throw new IllegalArgumentException("no reading: " + event);
  }
}
