package org.wetside.web.track;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The part of a file that is asked for (RFC 9110, 14).
 *
 * @param first index of its first byte
 * @param last index of its last byte; less than {@code first} when the file has no such part
 */
record ByteRange(long first, long last) {
  private static final Pattern ONE_RANGE = Pattern.compile("bytes=(\\d{0,18})-(\\d{0,18})");

  /** From the header; empty, which means all of it, when it asks for several or is not one. */
  static Optional<ByteRange> read(@Nullable String header, long size) {
    Matcher range = ONE_RANGE.matcher(header == null ? "" : header.strip());
    if (!range.matches()) {
      return Optional.empty();
    }
    String from = range.group(1);
    String to = range.group(2);
    if (from.isEmpty()) {
      return to.isEmpty()
          ? Optional.empty()
          : Optional.of(new ByteRange(Math.max(0, size - Long.parseLong(to)), size - 1));
    }
    long first = Long.parseLong(from);
    long last = to.isEmpty() ? size - 1 : Long.parseLong(to);
    return last < first && !to.isEmpty()
        ? Optional.empty()
        : Optional.of(new ByteRange(first, Math.min(last, size - 1)));
  }

  /** All of a file of that size. */
  static ByteRange all(long size) {
    return new ByteRange(0, size - 1);
  }

  /** Whether there is nothing in it. */
  boolean isEmpty() {
    return last < first;
  }

  long length() {
    return last - first + 1;
  }
}
