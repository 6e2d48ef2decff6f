package org.wetside.web.bench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.core.process.Cue;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.run.Happening;
import org.wetside.core.run.RunEvent;

/** Time the server was away, and what was due in it. */
public record GapView(String from, String to, double clockJumpSeconds, List<String> missed) {

  static List<GapView> all(BenchSnapshot at) {
    List<GapView> gaps = new ArrayList<>();
    for (RunEvent event : at.state().events()) {
      if (event.what() instanceof Happening.Gap gap) {
        gaps.add(
            new GapView(
                Instants.text(gap.from()),
                Instants.text(gap.to()),
                TimeSpan.toSeconds(gap.clockJump()),
                missed(at, gap)));
      }
    }
    return gaps;
  }

  /** What was to be done in a gap and nobody was told of, in words. */
  static List<String> missed(BenchSnapshot at, Happening.Gap gap) {
    List<String> words = new ArrayList<>();
    for (RunEvent event : at.state().events()) {
      Instant when = event.occurredAt();
      boolean within = !when.isBefore(gap.from()) && !when.isAfter(gap.to());
      if (within && event.what() instanceof Happening.CueMissed gone) {
        at.cues().stream()
            .filter(cue -> cue.id().equals(gone.cue()))
            .map(Cue::text)
            .findFirst()
            .ifPresent(words::add);
      }
    }
    return words;
  }
}
