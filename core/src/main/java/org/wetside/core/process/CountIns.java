package org.wetside.core.process;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Keeps the ticks before an act out of the tone of the cue before it. */
final class CountIns {
  /** Time that belongs to the cue before: no tick falls into its tone. */
  private static final Duration AFTER_A_CUE = Duration.ofMillis(1500);

  private CountIns() {}

  /** The same cues, in their order, each with as many ticks as there is room for. */
  static List<Cue> fitted(List<Cue> cues) {
    List<Cue> fitted = new ArrayList<>();
    for (int i = 0; i < cues.size(); i++) {
      Cue cue = cues.get(i);
      fitted.add(i == 0 ? cue : cue.withCountIn(ticks(cues.get(i - 1), cue)));
    }
    return fitted;
  }

  private static int ticks(Cue before, Cue cue) {
    Duration room = cue.at().minus(before.at()).minus(AFTER_A_CUE);
    return (int) Math.max(0, Math.min(cue.countIn(), room.toSeconds()));
  }
}
