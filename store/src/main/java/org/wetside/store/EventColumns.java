package org.wetside.store;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.run.EventKind;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Moment;
import org.wetside.core.run.Origin;
import org.wetside.core.run.RunEvent;

/** An event as columns: one row whatever happened, empty where the kind has nothing to say. */
final class EventColumns {
  /** The columns in the order in which {@link Runs} gives values for them. */
  static final String NAMES =
      "run_id, sequence, event_id, step, kind, occurred_at, received_at, screen, pressed_key,"
          + " origin, confirmed, moment, words, advice, by_ms, thermometer, raw_c, corrected_c,"
          + " from_at, to_at, refers_to, passed_over, reason";

  /** Between the ids of ticked checks; ids hold letters, digits and dashes only. */
  private static final String BETWEEN = " ";

  private @Nullable String origin;
  private @Nullable Boolean confirmed;
  private @Nullable String moment;
  private @Nullable String words;
  private @Nullable String advice;
  private @Nullable Duration by;
  private @Nullable String thermometer;
  private @Nullable Temperature raw;
  private @Nullable Temperature corrected;
  private @Nullable Instant from;
  private @Nullable Instant to;
  private @Nullable String refersTo;
  private @Nullable String passedOver;
  private @Nullable String reason;

  private EventColumns() {}

  /** The values of the columns that depend on the kind, in the order of the table. */
  static Object[] values(Happening what) {
    EventColumns columns = new EventColumns();
    columns.fill(what);
    return new Object[] {
      Optional.ofNullable(columns.origin),
      Optional.ofNullable(columns.confirmed),
      Optional.ofNullable(columns.moment),
      Optional.ofNullable(columns.words),
      Optional.ofNullable(columns.advice),
      Optional.ofNullable(columns.by),
      Optional.ofNullable(columns.thermometer),
      Optional.ofNullable(columns.raw),
      Optional.ofNullable(columns.corrected),
      Optional.ofNullable(columns.from),
      Optional.ofNullable(columns.to),
      Optional.ofNullable(columns.refersTo),
      Optional.ofNullable(columns.passedOver),
      Optional.ofNullable(columns.reason)
    };
  }

  private void fill(Happening what) {
    if (what instanceof Happening.Started it) {
      words = String.join(BETWEEN, it.ticked());
      confirmed = it.confirmed();
      passedOver = PassedOverText.of(it.passedOver());
      reason = it.reason();
    } else if (what instanceof Happening.StepBegun it) {
      moment = it.moment().word();
      origin = it.origin().word();
      confirmed = it.confirmed();
    } else if (what instanceof Happening.StepDrained it) {
      origin = it.origin().word();
      confirmed = it.confirmed();
    } else if (what instanceof Happening.Lengthened it) {
      by = it.by();
      words = it.reason();
    } else if (what instanceof Happening.CutShort it) {
      by = it.by();
      words = it.reason();
      confirmed = it.confirmed();
    } else if (what instanceof Happening.WaitingBegun it) {
      origin = it.origin().word();
    } else if (what instanceof Happening.ReadingTaken it) {
      thermometer = it.thermometer();
      raw = it.raw();
      corrected = it.corrected();
      confirmed = it.confirmed();
    } else if (what instanceof Happening.CueMissed it) {
      refersTo = it.cue();
    } else if (what instanceof Happening.Mishap it) {
      words = it.what();
      advice = it.advice();
      by = it.newTime().orElse(null);
      refersTo = it.about().isEmpty() ? null : it.about();
    } else if (what instanceof Happening.Note it) {
      words = it.text();
    } else if (what instanceof Happening.Gap it) {
      from = it.from();
      to = it.to();
      by = it.clockJump();
    } else if (what instanceof Happening.Undone it) {
      refersTo = it.eventId();
    } else if (what instanceof Happening.Finished it) {
      origin = it.origin().word();
    } else if (what instanceof Happening.Abandoned it) {
      words = it.reason();
    }
  }

  static RunEvent read(Row row) {
    return new RunEvent(
        row.text("event_id"),
        row.whole("sequence"),
        (int) row.whole("step"),
        happening(row),
        row.moment("occurred_at"),
        row.moment("received_at"),
        row.text("screen"),
        row.text("pressed_key"));
  }

  private static Happening happening(Row row) {
    return switch (EventKind.fromWord(row.text("kind"))) {
      case STARTED ->
          new Happening.Started(
              ids(row.text("words")),
              PassedOverText.read(row.maybeText("passed_over").orElse("")),
              row.maybeText("reason").orElse(""),
              row.yes("confirmed"));
      case STEP_BEGUN ->
          new Happening.StepBegun(
              Moment.fromWord(row.text("moment")), origin(row), row.yes("confirmed"));
      case STEP_DRAINED -> new Happening.StepDrained(origin(row), row.yes("confirmed"));
      case LENGTHENED -> new Happening.Lengthened(row.duration("by_ms"), row.text("words"));
      case CUT_SHORT ->
          new Happening.CutShort(row.duration("by_ms"), row.text("words"), row.yes("confirmed"));
      case WAITING_BEGUN -> new Happening.WaitingBegun(origin(row));
      case WAIT_ASKED -> new Happening.WaitAsked();
      case WAIT_WITHDRAWN -> new Happening.WaitWithdrawn();
      case READING_TAKEN ->
          new Happening.ReadingTaken(
              row.text("thermometer"),
              row.temperature("raw_c"),
              row.temperature("corrected_c"),
              row.yes("confirmed"));
      case CUE_MISSED -> new Happening.CueMissed(row.text("refers_to"));
      case MISHAP ->
          new Happening.Mishap(
              row.text("words"),
              row.text("advice"),
              row.maybeDuration("by_ms"),
              row.maybeText("refers_to").orElse(""));
      case NOTE -> new Happening.Note(row.text("words"));
      case GAP ->
          new Happening.Gap(row.moment("from_at"), row.moment("to_at"), row.duration("by_ms"));
      case UNDONE -> new Happening.Undone(row.text("refers_to"));
      case FINISHED -> new Happening.Finished(origin(row));
      case ABANDONED -> new Happening.Abandoned(row.text("words"));
    };
  }

  private static Origin origin(Row row) {
    return Origin.fromWord(row.text("origin"));
  }

  private static List<String> ids(String joined) {
    return joined.isEmpty() ? List.of() : List.of(joined.split(BETWEEN));
  }
}
