package org.wetside.core.run;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.Temperature;

/** What an event says happened; the envelope around it is {@link RunEvent}. */
public sealed interface Happening {
  /** Which row of the table it belongs to. */
  EventKind kind();

  /** Whether the conductor wrote it from the plan. */
  default boolean planned() {
    return false;
  }

  /**
   * The first pour begins.
   *
   * @param ticked ids of the checks that were ticked
   * @param passedOver checks that were neither ticked nor settled by what was known, in words
   * @param reason why a precious roll goes in untested; empty where nothing asked for one
   * @param confirmed whether a missing tick was asked about
   */
  record Started(List<String> ticked, List<PassedOver> passedOver, String reason, boolean confirmed)
      implements Happening {
    public Started {
      ticked = List.copyOf(ticked);
      passedOver = List.copyOf(passedOver);
      reason = reason.strip();
    }

    /** Nothing passed over, no reason given. */
    public Started(List<String> ticked, boolean confirmed) {
      this(ticked, List.of(), "", confirmed);
    }

    /** Whether a check was answered, one way or the other. */
    public boolean answers(String check) {
      return ticked.contains(check)
          || passedOver.stream().anyMatch(passed -> passed.id().equals(check));
    }

    @Override
    public EventKind kind() {
      return EventKind.STARTED;
    }
  }

  /** The event's step begins: its pour, or its tank full; much too early asks once. */
  record StepBegun(Moment moment, Origin origin, boolean confirmed) implements Happening {
    @Override
    public EventKind kind() {
      return EventKind.STEP_BEGUN;
    }

    @Override
    public boolean planned() {
      return origin == Origin.PLANNED;
    }
  }

  /** The drain of the event's step begins; much too early asks once. */
  record StepDrained(Origin origin, boolean confirmed) implements Happening {
    @Override
    public EventKind kind() {
      return EventKind.STEP_DRAINED;
    }

    @Override
    public boolean planned() {
      return origin == Origin.PLANNED;
    }
  }

  /** The event's step shall last longer by a time above zero. */
  record Lengthened(Duration by, String reason) implements Happening {
    @Override
    public EventKind kind() {
      return EventKind.LENGTHENED;
    }
  }

  /** The event's step shall last shorter by a time above zero; a developer asks once. */
  record CutShort(Duration by, String reason, boolean confirmed) implements Happening {
    @Override
    public EventKind kind() {
      return EventKind.CUT_SHORT;
    }
  }

  /** The event's step goes on past its time, up to its limit, until the person comes. */
  record WaitingBegun(Origin origin) implements Happening {
    @Override
    public EventKind kind() {
      return EventKind.WAITING_BEGUN;
    }

    @Override
    public boolean planned() {
      return origin == Origin.PLANNED;
    }
  }

  /** "Wait for me" before the event's step. */
  record WaitAsked() implements Happening {
    @Override
    public EventKind kind() {
      return EventKind.WAIT_ASKED;
    }
  }

  /** No longer "wait for me" before the event's step. */
  record WaitWithdrawn() implements Happening {
    @Override
    public EventKind kind() {
      return EventKind.WAIT_WITHDRAWN;
    }
  }

  /**
   * A temperature of the event's bath.
   *
   * @param thermometer its name; empty when not said
   * @param raw as read
   * @param corrected after the thermometer's offset
   * @param confirmed whether a surprising value was asked about
   */
  record ReadingTaken(String thermometer, Temperature raw, Temperature corrected, boolean confirmed)
      implements Happening {
    @Override
    public EventKind kind() {
      return EventKind.READING_TAKEN;
    }
  }

  /** No screen was there when the cue was due. */
  record CueMissed(String cue) implements Happening {
    @Override
    public EventKind kind() {
      return EventKind.CUE_MISSED;
    }
  }

  /**
   * Something went wrong.
   *
   * @param what in the words of the list of mishaps
   * @param advice what was advised for the first minute
   * @param newTime the developer's new time, if one was offered and accepted
   * @param about what more was said of it: the letter of the other bottle, or the dilution that was
   *     really mixed; may be empty
   */
  record Mishap(String what, String advice, Optional<Duration> newTime, String about)
      implements Happening {
    /** One of which nothing more was said. */
    public Mishap(String what, String advice, Optional<Duration> newTime) {
      this(what, advice, newTime, "");
    }

    @Override
    public EventKind kind() {
      return EventKind.MISHAP;
    }
  }

  /** Seen late, or a correction with its reason. */
  record Note(String text) implements Happening {
    @Override
    public EventKind kind() {
      return EventKind.NOTE;
    }
  }

  /**
   * The server was away.
   *
   * @param from last sign of life
   * @param to back again
   * @param clockJump how far the wall clock moved beyond the time that passed; zero when it kept
   */
  record Gap(Instant from, Instant to, Duration clockJump) implements Happening {
    @Override
    public EventKind kind() {
      return EventKind.GAP;
    }
  }

  /** Takes back an earlier event, by its id. */
  record Undone(String eventId) implements Happening {
    @Override
    public EventKind kind() {
      return EventKind.UNDONE;
    }
  }

  /** All steps done; the film hangs. */
  record Finished(Origin origin) implements Happening {
    @Override
    public EventKind kind() {
      return EventKind.FINISHED;
    }

    @Override
    public boolean planned() {
      return origin == Origin.PLANNED;
    }
  }

  /** Given up, with the reason. */
  record Abandoned(String reason) implements Happening {
    @Override
    public EventKind kind() {
      return EventKind.ABANDONED;
    }
  }
}
