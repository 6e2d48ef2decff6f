package org.wetside.web.bench;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.BadValueException;

/** Instants on the wire: ISO-8601 in UTC, always with milliseconds. */
final class Instants {
  private static final DateTimeFormatter MILLIS =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
          .withZone(ZoneOffset.UTC);

  private Instants() {}

  /**
   * Reads an instant that was sent.
   *
   * @param field its name, for the refusal
   */
  static Instant read(String field, String text) {
    try {
      return Instant.parse(text);
    } catch (DateTimeException unreadable) {
      throw new BadValueException(
          field, text, "an instant in UTC such as 2026-01-14T19:14:35.120Z");
    }
  }

  static String text(Instant at) {
    return MILLIS.format(at);
  }

  static @Nullable String textOrNull(Optional<Instant> at) {
    return at.map(Instants::text).orElse(null);
  }
}
