package org.wetside.web.plan;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.wetside.app.plan.Tonight;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Units;
import org.wetside.web.page.FilledForm;

/** The form that says what there is tonight. */
final class TonightForm {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("H:mm", Locale.ROOT);

  private final Units units;
  private FilledForm form;

  TonightForm(FilledForm form, Units units) {
    this.form = form;
    this.units = units;
  }

  /** Filled with what was said. */
  static FilledForm of(Tonight tonight, Units units) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("kitchen", tonight.kitchen().map(units::words).orElse(""));
    values.put("tap", tonight.tap().map(units::words).orElse(""));
    values.put("kettle", tonight.kettle().map(units::words).orElse(""));
    values.put("limit", tonight.limit().map(LocalTime::toString).orElse(""));
    return FilledForm.of(values);
  }

  /** What it says; the form then holds a message for every field that cannot be read. */
  Optional<Tonight> read() {
    Optional<Temperature> kitchen = field("kitchen", units::temperature);
    Optional<Temperature> tap = field("tap", units::temperature);
    Optional<Temperature> kettle = field("kettle", units::temperature);
    Optional<LocalTime> limit = field("limit", TonightForm::clock);
    if (form.isRefused()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new Tonight(kitchen, tap, kettle, limit));
    } catch (BadValueException refusal) {
      form = form.saying(refusal.thing(), refusal);
      return Optional.empty();
    }
  }

  /** The form as typed, with what is wrong. */
  FilledForm form() {
    return form;
  }

  private <T> Optional<T> field(String name, Function<String, T> parse) {
    if (form.isBlank(name)) {
      return Optional.empty();
    }
    try {
      return Optional.of(parse.apply(form.value(name)));
    } catch (BadValueException refusal) {
      form = form.saying(name, refusal);
      return Optional.empty();
    }
  }

  private static LocalTime clock(String text) {
    try {
      return LocalTime.parse(text, CLOCK);
    } catch (DateTimeParseException unreadable) {
      throw new BadValueException("your limit", text, "write the clock time, for example 22:00");
    }
  }
}
