package org.wetside.app.sound;

import java.time.Instant;
import java.util.List;
import org.wetside.app.NoAnswerException;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.app.process.ShowCues;
import org.wetside.core.process.Cue;

/** Makes the cue track: the whole of a run as sound, or what is left of it. */
public final class MakeTrack {
  /** How long the track of a plan is silent before its first cue. */
  public static final long LEAD_MILLISECONDS = 2000;

  /**
   * Of a run as it stands.
   *
   * @param from where the track begins; what began before it is left out. Of a run that has not
   *     begun, the moment of the first pour
   * @param alive whether the tick comes that says the sound is alive
   * @throws NoAnswerException when nothing is left to be heard
   */
  public CueTrack ofRun(BenchSnapshot run, Instant from, boolean alive) {
    Instant start = run.provisional() ? from : run.moments().start();
    List<Cue> cues = run.cues();
    if (cues.isEmpty() || start.plus(cues.get(cues.size() - 1).at()).isBefore(from)) {
      throw new NoAnswerException("every cue of this run was before " + from);
    }
    long begin = from.toEpochMilli();
    return CueTrack.of(
        new Score(cues, start, Voice.english(), run.otherTanks()).from(begin, alive), begin);
  }

  /**
   * Of a plan, from shortly before its first cue.
   *
   * @param alive whether the tick comes that says the sound is alive
   */
  public CueTrack ofPlan(ShowCues.Cues plan, boolean alive) {
    long begin = Instant.EPOCH.plus(plan.cues().get(0).at()).toEpochMilli() - LEAD_MILLISECONDS;
    return CueTrack.of(
        new Score(plan.cues(), Instant.EPOCH, Voice.english(), List.of()).from(begin, alive),
        begin);
  }
}
