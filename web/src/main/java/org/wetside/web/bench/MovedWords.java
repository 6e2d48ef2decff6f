package org.wetside.web.bench;

import java.time.Duration;
import java.util.List;
import org.wetside.core.run.EventKind;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Phase;
import org.wetside.core.run.Placement;
import org.wetside.core.run.RunDose;
import org.wetside.core.run.RunEvent;
import org.wetside.core.run.RunState;

/** Why the step that goes on ends elsewhere than planned. What moved another step says nothing. */
final class MovedWords {
  /** Less is not seen on a clock of seconds. */
  private static final Duration SEEN = Duration.ofSeconds(1);

  private MovedWords() {}

  /** Empty when the step that goes on ends as planned, and before the first. */
  static String of(RunState state, Placement moments, Placement planned) {
    if (state.phase() == Phase.WAITING) {
      return "waiting";
    }
    // A step that did not move itself was moved by the one before it.
    for (int step = state.current(); step >= 0; step--) {
      Duration own = shift(moments, planned, step).minus(shift(moments, planned, step - 1));
      if (own.abs().compareTo(SEEN) >= 0) {
        return because(state, step);
      }
    }
    return "";
  }

  private static Duration shift(Placement moments, Placement planned, int step) {
    return step < 0
        ? Duration.ZERO
        : Duration.between(planned.steps().get(step).end(), moments.steps().get(step).end());
  }

  private static String because(RunState state, int step) {
    List<RunEvent> applied = state.applied();
    for (int i = applied.size() - 1; i >= 0; i--) {
      String words = because(state, step, applied.get(i));
      if (!words.isEmpty()) {
        return words;
      }
    }
    return "";
  }

  /** Empty for what did not move the end of the step. */
  private static String because(RunState state, int step, RunEvent event) {
    boolean byHand = !event.screen().equals(RunEvent.CONDUCTOR);
    EventKind kind = event.kind();
    if (event.step() == step + 1 && kind == EventKind.STEP_BEGUN && byHand) {
      return "the last press";
    }
    if (event.step() != step) {
      return "";
    }
    String bath = state.plan().step(step).kind().word();
    return switch (kind) {
      case LENGTHENED -> byHand ? "the longer " + bath : "the other tank";
      case CUT_SHORT -> "the shorter " + bath;
      case MISHAP -> newTime(event) ? "the new time" : "";
      case READING_TAKEN -> RunDose.movedByLast(state, step).isZero() ? "" : "the last reading";
      case STEP_BEGUN, STEP_DRAINED -> byHand ? "the last press" : "";
      case WAITING_BEGUN -> "waiting";
      default -> "";
    };
  }

  private static boolean newTime(RunEvent event) {
    return event.what() instanceof Happening.Mishap mishap && mishap.newTime().isPresent();
  }
}
