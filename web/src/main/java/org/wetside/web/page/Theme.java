package org.wetside.web.page;

import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Day or night; without a choice the person's system decides. */
public enum Theme {
  /** Paper-white ground. */
  DAY,
  /** Dark slate, for a dim room. */
  NIGHT;

  /** As written in the cookie and in {@code data-theme}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The other one. */
  public Theme other() {
    return this == DAY ? NIGHT : DAY;
  }

  /** Reads {@link #word()} back; anything else is no choice. */
  public static Optional<Theme> fromWord(@Nullable String word) {
    for (Theme theme : values()) {
      if (theme.word().equals(word)) {
        return Optional.of(theme);
      }
    }
    return Optional.empty();
  }
}
