package org.wetside.web.process;

import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.process.ShowCues;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.TimeSpan;

/**
 * A question for cues as it is typed: along a process or along a load, never both.
 *
 * @param process short name of a process; null when a load is asked for
 * @param load number of a load; null when a process is asked for
 * @param development time of the first developer, such as {@code 9:00}, in place of the one that
 *     load or process has; null to keep that
 */
public record CuesQuery(
    @Nullable String process, @Nullable String load, @Nullable String development) {
  private static final int LONGEST_NUMBER = 9;

  /** From one word: digits are the number of a load, anything else a process. */
  public static CuesQuery typed(@Nullable String what, @Nullable String development) {
    boolean number = what != null && what.strip().matches("\\d+");
    return number ? new CuesQuery(null, what, development) : new CuesQuery(what, null, development);
  }

  /**
   * The answer.
   *
   * @throws BadValueException when both or neither are asked for, or what is there cannot be read
   */
  public ShowCues.Cues answer(ShowCues show) {
    Optional<String> wantedProcess = given(process);
    Optional<String> wantedLoad = given(load);
    if (wantedProcess.isPresent() && wantedLoad.isPresent()) {
      throw new BadValueException(
          "process and load",
          wantedProcess.get() + " and " + wantedLoad.get(),
          "ask for one of them, a load knows its process");
    }
    Optional<Duration> time =
        given(development).map(text -> TimeSpan.parse("development time", text));
    if (wantedLoad.isPresent()) {
      return show.of(number(wantedLoad.get()), time);
    }
    return show.of(
        wantedProcess.orElseThrow(
            () ->
                new BadValueException(
                    "process", "", "say which process or load, for example small-tank")),
        time);
  }

  private static long number(String load) {
    if (!load.matches("\\d+") || load.length() > LONGEST_NUMBER) {
      throw new BadValueException(
          "load", load, "a whole number of at most " + LONGEST_NUMBER + " digits, for example 3");
    }
    return Long.parseLong(load);
  }

  private static Optional<String> given(@Nullable String text) {
    return Optional.ofNullable(text).map(String::strip).filter(words -> !words.isEmpty());
  }
}
