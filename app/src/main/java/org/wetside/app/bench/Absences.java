package org.wetside.app.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.LongFunction;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Phase;
import org.wetside.core.run.RunState;

/**
 * What is written into a run's record when nobody looked after it for a while: the gap at once, and
 * each cue in it once no screen says any more that it told it.
 */
final class Absences {
  /** How often a sign of life is left while a run goes on. */
  static final Duration PULSE = Duration.ofSeconds(5);

  /** Two signs of life left out: whoever was away for longer has missed what was due. */
  private static final Duration LATE = PULSE.multipliedBy(2);

  /** Written into the record after the name of a screen that needed no server. */
  private static final String LED = " went on by the plan meanwhile; every cue was told";

  private final UntoldCues untold = new UntoldCues();
  private final LongFunction<RunState> states;
  private final BiConsumer<Long, Outage.Missed> record;
  private Instant lastSeen = Instant.EPOCH;

  /**
   * @param states where a run stands, by its number
   * @param record stores what is to be written of a run, by its number
   */
  Absences(LongFunction<RunState> states, BiConsumer<Long, Outage.Missed> record) {
    this.states = states;
    this.record = record;
  }

  /** Every run is looked after at this moment. */
  void seen(Instant now) {
    lastSeen = now;
  }

  /** When the next sign of life is due. */
  Instant nextPulse() {
    return lastSeen.plus(PULSE);
  }

  /** A run is taken up that another process, or nobody, looked after last. */
  void resumed(long id, Optional<Instant> lastAlive, Instant now) {
    Outage.of(states.apply(id), lastAlive, now).ifPresent(outage -> write(id, outage, now));
  }

  /**
   * A process that was held up or whose machine slept was away, though it never ended. Then what no
   * screen told by now is written too.
   *
   * @return whether anything was written
   */
  boolean found(long id, Instant now) {
    boolean late = late(id, now);
    List<Outage.Missed> missed = untold.missed(id, now);
    missed.forEach(one -> record.accept(id, one));
    return late || !missed.isEmpty();
  }

  private boolean late(long id, Instant now) {
    RunState state = states.apply(id);
    boolean watched = lastSeen.isAfter(Instant.EPOCH);
    boolean goesOn = state.phase() == Phase.RUNNING || state.phase() == Phase.WAITING;
    if (!watched || !goesOn || !lastSeen.plus(LATE).isBefore(now)) {
      return false;
    }
    Instant lastEvent = state.events().get(state.events().size() - 1).receivedAt();
    if (!lastEvent.plus(LATE).isBefore(now)) {
      return false;
    }
    Optional<Outage> outage = Outage.of(state, Optional.of(lastSeen), now);
    outage.ifPresent(missed -> write(id, missed, now));
    return outage.isPresent();
  }

  /**
   * A screen has led a run without a break since a moment, by its own plan.
   *
   * @return whether that answers for what waited to be written
   */
  boolean led(long id, String screen, Instant since, Instant now) {
    if (!untold.toldBy(id, since)) {
      return false;
    }
    int step = Math.max(0, states.apply(id).current());
    record.accept(id, new Outage.Missed(now, step, new Happening.Note(screen + LED)));
    return true;
  }

  /** When what waits is written unless a screen answers for it. */
  Optional<Instant> next() {
    return untold.next();
  }

  private void write(long id, Outage outage, Instant now) {
    record.accept(id, outage.gap());
    untold.ask(id, outage, now);
  }
}
