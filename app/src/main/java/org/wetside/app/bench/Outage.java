package org.wetside.app.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.core.process.Act;
import org.wetside.core.process.Cue;
import org.wetside.core.process.CueSheet;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Placement;
import org.wetside.core.run.RunState;

/**
 * The time nobody watched a run, and what was due in it.
 *
 * @param happenings the gap itself, then every cue for the hands that nobody was told of
 */
record Outage(List<Missed> happenings) {
  /** Shorter is not worth a word: a sign of life is left every five seconds. */
  private static final Duration WORTH_A_WORD = Duration.ofSeconds(1);

  /** Something to be written down. */
  record Missed(Instant at, int step, Happening what) {}

  static Optional<Outage> of(RunState state, Optional<Instant> lastAlive, Instant now) {
    Instant lastEvent = state.events().get(state.events().size() - 1).receivedAt();
    Instant seen = lastAlive.filter(lastEvent::isBefore).orElse(lastEvent);
    // The machine's clock may have been set back while the program was away: then nobody knows how
    // long it was, and that is said in place of a length.
    boolean setBack = now.isBefore(seen);
    Instant from = setBack ? now : seen;
    Duration jump = setBack ? Duration.between(seen, now) : Duration.ZERO;
    if (!setBack && Duration.between(from, now).compareTo(WORTH_A_WORD) < 0) {
      return Optional.empty();
    }
    List<Missed> happenings = new ArrayList<>();
    int current = Math.max(0, state.current());
    happenings.add(new Missed(now, current, new Happening.Gap(from, now, jump)));
    Placement moments = Placement.of(state, now);
    for (Cue cue : CueSheet.along(moments.offsets(state.plan()), "")) {
      Instant at = moments.start().plus(cue.at());
      if (forHands(cue.act()) && at.isAfter(from) && !at.isAfter(now)) {
        happenings.add(new Missed(at, cue.step(), new Happening.CueMissed(cue.id())));
      }
    }
    return Optional.of(new Outage(happenings));
  }

  private static boolean forHands(Act act) {
    return act == Act.POUR || act == Act.AGITATE || act == Act.DRAIN || act == Act.LIGHT_ON;
  }
}
