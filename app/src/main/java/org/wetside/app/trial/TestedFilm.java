package org.wetside.app.trial;

import java.util.List;
import org.wetside.core.quantity.BadValueException;
import org.wetside.store.Rolls;
import org.wetside.store.Session;

/** The rolls whose washing is tested. */
final class TestedFilm {
  private TestedFilm() {}

  /**
   * Their numbers as they stand in the book, in order, each once.
   *
   * @throws BadValueException when none is given or one is not known
   */
  static List<String> require(Session session, List<String> numbers) {
    Rolls rolls = new Rolls(session);
    List<String> known =
        numbers.stream()
            .map(String::strip)
            .filter(number -> !number.isEmpty())
            .map(
                number ->
                    rolls
                        .find(number)
                        .orElseThrow(
                            () ->
                                new BadValueException(
                                    "roll", number, "no roll of that number is in the book"))
                        .number())
            .distinct()
            .sorted()
            .toList();
    if (known.isEmpty()) {
      throw new BadValueException("rolls", "", "say which roll was washed, for example 26-001");
    }
    return known;
  }
}
