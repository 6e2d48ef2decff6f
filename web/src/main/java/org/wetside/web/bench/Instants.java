package org.wetside.web.bench;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Instants on the wire: ISO-8601 in UTC, always with milliseconds. */
final class Instants {
  private static final DateTimeFormatter MILLIS =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
          .withZone(ZoneOffset.UTC);

  private Instants() {}

  static String text(Instant at) {
    return MILLIS.format(at);
  }

  static @Nullable String textOrNull(Optional<Instant> at) {
    return at.map(Instants::text).orElse(null);
  }
}
