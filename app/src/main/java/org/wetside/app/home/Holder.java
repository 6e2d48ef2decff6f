package org.wetside.app.home;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;

/**
 * Who holds a home.
 *
 * @param pid process id
 * @param since when it took the lock
 * @param address where its server listens, once it does
 */
public record Holder(long pid, Instant since, Optional<String> address) {
  /** The text kept in the lock file, one fact a line; reads back by {@link #parse}. */
  String written() {
    return "pid " + pid + "\nsince " + since + "\n" + address.map(a -> "at " + a + "\n").orElse("");
  }

  /** Empty when the text is not what {@link #written} writes, as after a crash half way. */
  static Optional<Holder> parse(String text) {
    List<String> lines = text.lines().toList();
    if (lines.size() < 2
        || !lines.get(0).startsWith("pid ")
        || !lines.get(1).startsWith("since ")) {
      return Optional.empty();
    }
    try {
      Optional<String> address =
          lines.size() > 2 && lines.get(2).startsWith("at ")
              ? Optional.of(lines.get(2).substring(3))
              : Optional.empty();
      return Optional.of(
          new Holder(
              Long.parseLong(lines.get(0).substring(4)),
              Instant.parse(lines.get(1).substring(6)),
              address));
    } catch (NumberFormatException | DateTimeParseException unreadable) {
      return Optional.empty();
    }
  }
}
