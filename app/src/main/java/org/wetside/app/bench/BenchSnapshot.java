package org.wetside.app.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wetside.app.care.BathCare;
import org.wetside.app.checks.BeforePour;
import org.wetside.core.hands.Clash;
import org.wetside.core.process.Cue;
import org.wetside.core.process.CueSheet;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.Hands;
import org.wetside.core.run.Phase;
import org.wetside.core.run.Placement;
import org.wetside.core.run.RunCard;
import org.wetside.core.run.RunState;

/**
 * Where a run stands at one moment, with everything a screen draws from.
 *
 * @param now the server's moment
 * @param card its head
 * @param state the fold over its events
 * @param moments every moment, happened and expected
 * @param planned the same as planned when the run started
 * @param cues all cues at the moments of {@link #moments}; of a run that is over only those that
 *     were due before its end
 * @param keys what may be pressed, now or later
 * @param hands what is known of pouring and draining with this tank
 * @param taken for each step what its bottle gives
 * @param clash the next moment at which two tanks want the hands, if there is one
 * @param before what is looked at before the first pour; nothing once it has begun
 * @param care what is said of each bath when it is handled; nothing once the run is over
 * @param otherTanks names of the tanks at the Bench beside this one, from which its cues are told
 *     apart
 */
public record BenchSnapshot(
    Instant now,
    RunCard card,
    RunState state,
    Placement moments,
    Placement planned,
    List<Cue> cues,
    List<Key> keys,
    Hands hands,
    List<Optional<Volume>> taken,
    BeforePour before,
    List<BathCare> care,
    Optional<Clash> clash,
    List<String> otherTanks) {
  public BenchSnapshot {
    cues = List.copyOf(cues);
    keys = List.copyOf(keys);
    taken = List.copyOf(taken);
    care = List.copyOf(care);
    otherTanks = List.copyOf(otherTanks);
  }

  static BenchSnapshot of(
      LiveRun run, Hands hands, BeforePour before, List<BathCare> care, Instant now) {
    RunState state = run.state();
    Placement moments = Placement.of(state, now);
    return new BenchSnapshot(
        now,
        run.card(),
        state,
        moments,
        Placement.planned(state.plan(), moments.start()),
        cues(state, moments, run.card().tank()),
        Keys.of(state, moments, now),
        hands,
        run.taken(),
        before,
        care,
        Optional.empty(),
        List.of());
  }

  /** Nothing is said any more once a run is over: what was still to come falls away. */
  private static List<Cue> cues(RunState state, Placement moments, String tank) {
    if (state.phase().over() && state.startedAt().isEmpty()) {
      return List.of();
    }
    List<Cue> all = CueSheet.along(moments.offsets(state.plan()), tank);
    return state
        .endedAt()
        .map(end -> Duration.between(moments.start(), end))
        .map(last -> all.stream().filter(cue -> cue.at().compareTo(last) <= 0).toList())
        .orElse(all);
  }

  /** The same beside other runs. */
  BenchSnapshot beside(Optional<Clash> next, List<String> tanks) {
    return new BenchSnapshot(
        now, card, state, moments, planned, cues, keys, hands, taken, before, care, next, tanks);
  }

  /** Whether all instants are as if the first pour were now. */
  public boolean provisional() {
    return state.startedAt().isEmpty();
  }

  /** When a cue is due. */
  public Instant at(Cue cue) {
    return moments.start().plus(cue.at());
  }

  /** When the film hangs, or hung. */
  public Instant endsAt() {
    return state.endedAt().orElse(moments.end());
  }

  /** While waiting, the moment at which the bath reaches its limit and the plan goes on. */
  public Optional<Instant> waitingUntil() {
    return state.phase() == Phase.WAITING
        ? Optional.of(moments.steps().get(state.current()).end())
        : Optional.empty();
  }
}
