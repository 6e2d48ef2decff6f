package org.wetside.app.curves;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.wetside.core.quantity.BadValueException;

/** Reads fields one after the other and remembers what is wrong with each. */
final class TypedFields {
  private final Map<String, String> problems = new LinkedHashMap<>();

  /** What is wrong, by field. */
  Map<String, String> problems() {
    return Map.copyOf(problems);
  }

  void forget() {
    problems.clear();
  }

  /** A field that must not be blank. */
  <T> Optional<T> needed(String field, String thing, String typed, Function<String, T> read) {
    if (typed.isBlank()) {
      refuse(field, new BadValueException(thing, "", "it is needed"));
    }
    return read(field, typed, read);
  }

  /** A field; empty when it is blank, or wrong. */
  <T> Optional<T> read(String field, String typed, Function<String, T> read) {
    if (typed.isBlank()) {
      return Optional.empty();
    }
    try {
      return Optional.of(read.apply(typed.strip()));
    } catch (BadValueException refused) {
      refuse(field, refused);
      return Optional.empty();
    }
  }

  /** Something about a field that was read already. */
  void check(String field, Runnable rule) {
    try {
      rule.run();
    } catch (BadValueException refused) {
      refuse(field, refused);
    }
  }

  void refuse(String field, BadValueException refused) {
    problems.put(field, String.valueOf(refused.getMessage()));
  }
}
