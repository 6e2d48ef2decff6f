package org.wetside.web.bench;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.bench.SentEvent;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.run.EventKind;
import org.wetside.core.run.Happening;
import org.wetside.core.run.MishapAdvice;
import org.wetside.core.run.Moment;
import org.wetside.core.run.Origin;
import org.wetside.core.run.PassedOver;

/** An event as a screen posts it; the fields stand in docs/bench-snapshot.md. */
public record EventBody(
    @Nullable String id,
    @Nullable String kind,
    @Nullable Integer step,
    @Nullable String occurredAt,
    @Nullable String screen,
    @Nullable String key,
    @Nullable List<String> ticked,
    @Nullable List<String> passedOver,
    @Nullable String moment,
    @Nullable Double seconds,
    @Nullable String reason,
    @Nullable Double temperatureC,
    @Nullable Double temperatureF,
    @Nullable String thermometer,
    @Nullable String what,
    @Nullable Double newSeconds,
    @Nullable String about,
    @Nullable String text,
    @Nullable String undoes,
    @Nullable String cue,
    @Nullable Boolean confirmed) {

  /**
   * The event it means.
   *
   * @param mishaps the list from which the advice given is taken
   * @throws BadValueException naming the field and its limit
   */
  SentEvent event(List<MishapAdvice> mishaps) {
    EventKind which = EventKind.fromWord(required("kind", kind));
    return new SentEvent(
        matching("id", required("id", id), "[A-Za-z0-9-]{8,80}", "8 to 80 letters, digits, dashes"),
        Optional.ofNullable(step),
        happening(which, mishaps),
        Instants.read("occurredAt", required("occurredAt", occurredAt)),
        matching("screen", required("screen", screen), ".{1,40}", "1 to 40 characters"),
        key == null ? "" : key);
  }

  private Happening happening(EventKind which, List<MishapAdvice> mishaps) {
    boolean yes = Boolean.TRUE.equals(confirmed);
    return switch (which) {
      case STARTED -> new Happening.Started(ids(ticked), passed(), orEmpty(reason), yes);
      case STEP_BEGUN ->
          new Happening.StepBegun(Moment.fromWord(required("moment", moment)), Origin.PRESSED, yes);
      case STEP_DRAINED -> new Happening.StepDrained(Origin.PRESSED, yes);
      case LENGTHENED -> new Happening.Lengthened(time("seconds", seconds), orEmpty(reason));
      case CUT_SHORT -> new Happening.CutShort(time("seconds", seconds), orEmpty(reason), yes);
      case WAITING_BEGUN -> new Happening.WaitingBegun(Origin.PRESSED);
      case WAIT_ASKED -> new Happening.WaitAsked();
      case WAIT_WITHDRAWN -> new Happening.WaitWithdrawn();
      case READING_TAKEN -> reading(yes);
      case MISHAP -> mishap(mishaps);
      case NOTE -> new Happening.Note(required("text", text));
      case UNDONE -> new Happening.Undone(required("undoes", undoes));
      case FINISHED -> new Happening.Finished(Origin.PRESSED);
      case ABANDONED -> new Happening.Abandoned(required("reason", reason));
      case CUE_MISSED -> new Happening.CueMissed(required("cue", cue));
      case GAP ->
          throw new BadValueException("kind of event", which.word(), "only the program writes it");
    };
  }

  private List<PassedOver> passed() {
    return ids(passedOver).stream().map(id -> new PassedOver(id, "")).toList();
  }

  private static List<String> ids(@Nullable List<String> said) {
    return said == null ? List.of() : said;
  }

  private Happening reading(boolean yes) {
    Temperature raw;
    if (temperatureC != null) {
      raw = Temperature.ofCelsius(temperatureC);
    } else if (temperatureF != null) {
      raw = Temperature.ofFahrenheit(temperatureF);
    } else {
      throw new BadValueException(
          "bath temperature", "not given", "send temperatureC or temperatureF");
    }
    return new Happening.ReadingTaken(orEmpty(thermometer), raw, raw, yes);
  }

  private Happening mishap(List<MishapAdvice> mishaps) {
    String said = required("what", what);
    String advice =
        mishaps.stream()
            .filter(known -> known.what().equals(said))
            .map(MishapAdvice::firstMinute)
            .findFirst()
            .orElse("");
    return new Happening.Mishap(
        said, advice, Optional.ofNullable(newSeconds).map(TimeSpan::ofSeconds), about(said));
  }

  /** A bottle is named as the shelf names it. */
  private String about(String said) {
    String more = orEmpty(about).strip();
    if (more.isEmpty()) {
      return "";
    }
    return said.equals(MishapAdvice.WRONG_BOTTLE)
        ? matching("about", more, "[\\p{L}\\p{N}]{1,3}", "the letter of the other bottle")
            .toUpperCase(Locale.ROOT)
        : matching("about", more, ".{1,60}", "1 to 60 characters");
  }

  private static Duration time(String field, @Nullable Double value) {
    if (value == null || !(value > 0) || value > 86_400) {
      throw new BadValueException(field, String.valueOf(value), "above 0 and at most 86400 s");
    }
    return TimeSpan.ofSeconds(value);
  }

  private static String required(String field, @Nullable String value) {
    if (value == null || value.isBlank()) {
      throw new BadValueException(field, "", "it must be given");
    }
    return value;
  }

  private static String matching(String field, String value, String form, String limit) {
    if (!value.matches(form)) {
      throw new BadValueException(field, value, limit);
    }
    return value;
  }

  private static String orEmpty(@Nullable String value) {
    return value == null ? "" : value;
  }
}
