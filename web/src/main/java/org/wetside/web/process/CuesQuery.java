package org.wetside.web.process;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.process.ShowCues;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.TimeSpan;

/**
 * A question for cues as it is typed.
 *
 * @param what short name of a process, or the number of a load
 * @param development time of the first developer, such as {@code 9:00}; null where it is known
 */
public record CuesQuery(@Nullable String what, @Nullable String development) {
  /** The answer. */
  public ShowCues.Cues answer(ShowCues show) {
    if (what == null || what.isBlank()) {
      throw new BadValueException(
          "process", "", "say which process or load, for example small-tank");
    }
    if (what.strip().matches("\\d{1,9}")) {
      return show.of(Long.parseLong(what.strip()));
    }
    return show.of(
        what,
        development == null || development.isBlank()
            ? Optional.empty()
            : Optional.of(TimeSpan.parse("development time", development)));
  }
}
