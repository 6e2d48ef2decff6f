package org.wetside.web.bench;

import java.time.Duration;
import java.util.List;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.core.run.EventKind;
import org.wetside.core.run.Phase;
import org.wetside.core.run.RunDose;
import org.wetside.core.run.RunEvent;

/** Why the end stands elsewhere than planned. */
final class MovedWords {
  private MovedWords() {}

  static String of(BenchSnapshot at, Duration moved) {
    if (moved.isZero()) {
      return "";
    }
    if (at.state().phase() == Phase.WAITING) {
      return "waiting";
    }
    List<RunEvent> applied = at.state().applied();
    for (int i = applied.size() - 1; i >= 0; i--) {
      RunEvent event = applied.get(i);
      if (event.screen().equals(RunEvent.CONDUCTOR)) {
        if (event.kind() == EventKind.LENGTHENED) {
          return "the other tank";
        }
        continue;
      }
      EventKind kind = event.kind();
      String bath = at.state().plan().step(event.step()).kind().word();
      if (kind == EventKind.LENGTHENED) {
        return "the longer " + bath;
      }
      if (kind == EventKind.CUT_SHORT) {
        return "the shorter " + bath;
      }
      if (kind == EventKind.MISHAP) {
        return "the new time";
      }
      if (kind == EventKind.READING_TAKEN
          && !RunDose.movedByLast(at.state(), event.step()).isZero()) {
        return "the last reading";
      }
      if (kind == EventKind.STEP_BEGUN || kind == EventKind.STEP_DRAINED) {
        return "the last press";
      }
    }
    return "waiting";
  }
}
