package org.wetside.web.mixing;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.BadValueException;

/** What was typed into a field or an option: something or nothing. */
final class Typed {
  private Typed() {}

  static Optional<String> maybe(@Nullable String text) {
    return text == null || text.isBlank() ? Optional.empty() : Optional.of(text.strip());
  }

  static String required(String thing, @Nullable String text, String example) {
    return maybe(text)
        .orElseThrow(
            () -> new BadValueException(thing, "nothing", "give it, for example " + example));
  }

  static double number(String thing, String text, String example) {
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException notOne) {
      throw new BadValueException(thing, text, "write a number, for example " + example);
    }
  }
}
