package org.wetside.web.shelf;

import java.time.Duration;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.shelf.Clearing;
import org.wetside.web.page.FieldReader;
import org.wetside.web.page.FilledForm;

/** The fields of a clip test that was timed. */
final class ClearingFields {
  private ClearingFields() {}

  /** Reads them; empty when the reader has noted complaints. */
  static Optional<Clearing> read(FieldReader reader) {
    FilledForm form = reader.form();
    Optional<Duration> time =
        reader.required("clearing", "clearing time", text -> TimeSpan.parse("clearing time", text));
    Optional<Temperature> at =
        reader.required("clipAt", "temperature of the fixer", Temperature::parse);
    reader.required("clipFilm", "film of the clip", text -> text);
    if (!reader.isGood() || time.isEmpty() || at.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new Clearing(
              time.get(),
              form.value("clipFilm"),
              form.value("clipDilution"),
              at.get(),
              form.value("baseline").equals("fresh")));
    } catch (BadValueException refused) {
      reader.refuse(refused.thing().startsWith("temperature") ? "clipAt" : "clearing", refused);
      return Optional.empty();
    }
  }
}
