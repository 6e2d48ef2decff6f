package org.wetside.web.page;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;

/**
 * Reads the fields of a form one by one and keeps every complaint beside its field, so that a
 * person sees all of them at once. A bare number means the unit that stands in the label.
 */
public final class FieldReader {
  private final Units units;
  private FilledForm form;

  /** For a form as it was typed, by somebody who reads these units. */
  public FieldReader(FilledForm form, Units units) {
    this.form = form;
    this.units = units;
  }

  /** What volumes and temperatures are read in. */
  public Units units() {
    return units;
  }

  /** The form with all complaints so far. */
  public FilledForm form() {
    return form;
  }

  /** Whether every field read so far was understood. */
  public boolean isGood() {
    return !form.isRefused();
  }

  /** Puts a complaint beside a field. */
  public void refuse(String name, BadValueException refusal) {
    form = form.saying(name, refusal);
  }

  /** What was typed, understood; empty when the field is blank or a complaint was noted. */
  public <T> Optional<T> maybe(String name, Function<String, T> read) {
    if (form.isBlank(name)) {
      return Optional.empty();
    }
    try {
      return Optional.of(read.apply(form.value(name)));
    } catch (BadValueException refused) {
      refuse(name, refused);
      return Optional.empty();
    }
  }

  /** The same, and a blank field is a complaint. */
  public <T> Optional<T> required(String name, String thing, Function<String, T> read) {
    if (form.isBlank(name)) {
      refuse(name, new BadValueException(thing, "", "it is needed"));
    }
    return maybe(name, read);
  }

  /** The same for a volume; a bare number is in the chosen measure. */
  public Optional<Volume> maybeVolume(String name) {
    return maybe(name, units::volume);
  }

  /** The same for a volume that is needed. */
  public Optional<Volume> requiredVolume(String name, String thing) {
    return required(name, thing, units::volume);
  }

  /** The same for a temperature; a bare number is on the chosen scale. */
  public Optional<Temperature> maybeTemperature(String name) {
    return maybe(name, units::temperature);
  }

  /** The same for a temperature that is needed. */
  public Optional<Temperature> requiredTemperature(String name, String thing) {
    return required(name, thing, units::temperature);
  }

  /** A day as the browser's field sends it. */
  public static LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException notOne) {
      throw new BadValueException(
          "day", text, "write it as year-month-day, for example 2026-01-10");
    }
  }

  /** A whole number of at least 1. */
  public static int count(String text) {
    try {
      int count = Integer.parseInt(text);
      if (count >= 1) {
        return count;
      }
    } catch (NumberFormatException notOne) {
      // falls through to the same complaint
    }
    throw new BadValueException("count", text, "a whole number of at least 1");
  }
}
