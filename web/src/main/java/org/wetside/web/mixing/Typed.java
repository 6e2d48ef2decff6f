package org.wetside.web.mixing;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.BadValueException;

/** What was typed into a field or an option: something or nothing. */
public final class Typed {
  private Typed() {}

  /** What was typed, without blanks around it. */
  public static Optional<String> maybe(@Nullable String text) {
    return text == null || text.isBlank() ? Optional.empty() : Optional.of(text.strip());
  }

  /**
   * The same where something has to be typed.
   *
   * @throws BadValueException when nothing was, with an example
   */
  public static String required(String thing, @Nullable String text, String example) {
    return maybe(text)
        .orElseThrow(
            () -> new BadValueException(thing, "nothing", "give it, for example " + example));
  }

  /**
   * What was typed as a number.
   *
   * @throws BadValueException when it is none, with an example
   */
  public static double number(String thing, String text, String example) {
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException notOne) {
      throw new BadValueException(thing, text, "write a number, for example " + example);
    }
  }
}
