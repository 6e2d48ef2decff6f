package org.wetside.web.bench;

import java.time.Duration;
import java.util.stream.Collectors;
import org.wetside.core.run.Happening;
import org.wetside.core.run.MishapAdvice;
import org.wetside.core.run.Moment;
import org.wetside.core.run.PassedOver;
import org.wetside.core.run.RunEvent;
import org.wetside.core.run.RunState;

/** What happened, as a line in the record. */
final class EventWords {
  private EventWords() {}

  static String of(RunState state, RunEvent event) {
    String bath = state.plan().step(event.step()).kind().heading();
    Happening what = event.what();
    if (what instanceof Happening.StepBegun begun) {
      return bath + (begun.moment() == Moment.POUR ? " poured" : " in");
    }
    if (what instanceof Happening.StepDrained) {
      return bath + " drained";
    }
    if (what instanceof Happening.Lengthened longer) {
      return bath + " " + clock(longer.by()) + " longer" + because(longer.reason());
    }
    if (what instanceof Happening.CutShort shorter) {
      return bath + " " + clock(shorter.by()) + " shorter" + because(shorter.reason());
    }
    if (what instanceof Happening.WaitingBegun) {
      return "Waiting in the " + bath.toLowerCase(java.util.Locale.ROOT);
    }
    if (what instanceof Happening.WaitAsked) {
      return "Wait before the " + bath.toLowerCase(java.util.Locale.ROOT);
    }
    if (what instanceof Happening.WaitWithdrawn) {
      return "Go on by the plan";
    }
    if (what instanceof Happening.ReadingTaken reading) {
      return bath + " " + reading.raw() + " as read, " + reading.corrected() + " corrected";
    }
    if (what instanceof Happening.CueMissed missed) {
      return "Nobody was told: " + missed.cue();
    }
    if (what instanceof Happening.Mishap mishap) {
      return mishap(mishap);
    }
    if (what instanceof Happening.Note note) {
      return note.text();
    }
    if (what instanceof Happening.Gap) {
      return "The program was away";
    }
    if (what instanceof Happening.Undone) {
      return "Taken back";
    }
    if (what instanceof Happening.Abandoned given) {
      return "Given up" + because(given.reason());
    }
    return what instanceof Happening.Started started ? firstPour(started) : "Hung";
  }

  /** {@code wrong dilution …; new time 11:00 for 1+3}, {@code poured …: bottle F}. */
  static String mishap(Happening.Mishap mishap) {
    boolean bottle = mishap.what().equals(MishapAdvice.WRONG_BOTTLE);
    String about =
        mishap.about().isEmpty() ? "" : (bottle ? ": bottle " : " for ") + mishap.about();
    return mishap.what()
        + mishap.newTime().map(time -> "; new time " + clock(time)).orElse("")
        + about;
  }

  private static String firstPour(Happening.Started started) {
    String passed =
        started.passedOver().stream().map(PassedOver::text).collect(Collectors.joining("; "));
    return "First pour"
        + (passed.isEmpty() ? "" : ", passed over: " + passed)
        + (started.reason().isEmpty() ? "" : ". Precious, untested: " + started.reason());
  }

  /** {@code 9:45}. */
  static String clock(Duration time) {
    long seconds = Math.round(time.toMillis() / 1000.0);
    return seconds / 60 + ":" + (seconds % 60 < 10 ? "0" : "") + seconds % 60;
  }

  private static String because(String reason) {
    return reason.isBlank() ? "" : ": " + reason;
  }
}
