package org.wetside.web.trial;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.trial.ClipWish;
import org.wetside.web.page.FieldReader;

/** The form that begins a test. */
final class TestForm {
  private TestForm() {}

  /** The clip; empty when the reader has noted complaints. */
  static Optional<ClipWish> clip(FieldReader reader) {
    Optional<String> film = reader.required("film", "film of the clip", text -> text);
    Optional<String> dilution = reader.required("dilution", "dilution of the fixer", text -> text);
    Optional<Temperature> degrees =
        reader.requiredTemperature("temperature", "temperature of the fixer");
    if (film.isEmpty() || dilution.isEmpty() || degrees.isEmpty()) {
      return Optional.empty();
    }
    boolean fresh = !reader.form().isBlank("fresh");
    try {
      return Optional.of(new ClipWish(film.get(), dilution.get(), degrees.get(), fresh));
    } catch (BadValueException refused) {
      reader.refuse(fieldOf(refused), refused);
      return Optional.empty();
    }
  }

  /** The numbers of rolls, parted by commas or blanks. */
  static List<String> rolls(FieldReader reader) {
    return Arrays.stream(reader.form().value("rolls").split("[,;\\s]+", -1))
        .filter(number -> !number.isEmpty())
        .toList();
  }

  /** The field that a refusal is about. */
  static String fieldOf(BadValueException refused) {
    String thing = refused.thing();
    if (thing.startsWith("film")) {
      return "film";
    }
    if (thing.startsWith("dilution")) {
      return "dilution";
    }
    if (thing.startsWith("temperature")) {
      return "temperature";
    }
    return thing.startsWith("roll") ? "rolls" : "";
  }
}
