package org.wetside.app.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.core.process.Act;
import org.wetside.core.process.Cue;
import org.wetside.core.process.CueSheet;
import org.wetside.core.run.EventKind;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Placement;
import org.wetside.core.run.RunEvent;
import org.wetside.core.run.RunState;

/**
 * The time the server was away from a run, and what was due in it.
 *
 * @param from the moment from which nobody is known to have told anything
 * @param gap the absence itself
 * @param cues every cue for the hands that was due in it
 */
record Outage(Instant from, Missed gap, List<Missed> cues) {
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
    int current = Math.max(0, state.current());
    Missed gap = new Missed(now, current, new Happening.Gap(from, now, jump));
    Instant untold = unansweredSince(state, from).orElse(from);
    List<Missed> cues = new ArrayList<>();
    Placement moments = Placement.of(state, now);
    for (Cue cue : CueSheet.along(moments.offsets(state.plan()), "")) {
      Instant at = moments.start().plus(cue.at());
      if (forHands(cue.act()) && at.isAfter(untold) && !at.isAfter(now)) {
        cues.add(new Missed(at, cue.step(), new Happening.CueMissed(cue.id())));
      }
    }
    return Optional.of(new Outage(untold, gap, cues));
  }

  /** The program may have ended again before it was known who told the cues of the last gap. */
  private static Optional<Instant> unansweredSince(RunState state, Instant lastSeen) {
    for (int i = state.events().size() - 1; i >= 0; i--) {
      RunEvent event = state.events().get(i);
      if (event.what() instanceof Happening.Gap last) {
        boolean inTime = lastSeen.isBefore(last.to().plus(UntoldCues.ASKED_FOR));
        return inTime ? Optional.of(last.from()) : Optional.empty();
      }
      boolean answer =
          event.what() instanceof Happening.Note || event.kind() == EventKind.CUE_MISSED;
      if (answer && event.screen().equals(RunEvent.CONDUCTOR)) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  private static boolean forHands(Act act) {
    return act == Act.POUR || act == Act.AGITATE || act == Act.DRAIN || act == Act.LIGHT_ON;
  }
}
