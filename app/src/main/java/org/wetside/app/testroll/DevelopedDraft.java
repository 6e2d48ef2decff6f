package org.wetside.app.testroll;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.quantity.Units;
import org.wetside.core.testroll.PieceDeveloped;

/**
 * How a piece was really developed, as it is typed; empty is not said.
 *
 * @param time for example {@code 8:10}
 * @param temp temperature of the developer
 * @param day year-month-day
 */
public record DevelopedDraft(String time, String temp, String day) {
  /**
   * What was done.
   *
   * @param planned time where none is said
   * @param today day where none is said
   * @param problems takes what is wrong, by the field
   */
  public Optional<PieceDeveloped> read(
      Duration planned, LocalDate today, Units units, Map<String, BadValueException> problems) {
    Duration really = planned;
    Optional<Temperature> warm = Optional.empty();
    LocalDate on = today;
    try {
      really = time.isBlank() ? planned : TimeSpan.parse("development time", time);
      new PieceDeveloped(really, Optional.empty(), today);
    } catch (BadValueException refused) {
      problems.put("time", refused);
    }
    try {
      warm = temp.isBlank() ? Optional.empty() : Optional.of(units.temperature(temp));
    } catch (BadValueException refused) {
      problems.put("temp", refused);
    }
    try {
      on = day.isBlank() ? today : LocalDate.parse(day.strip());
    } catch (DateTimeException notOne) {
      problems.put(
          "day",
          new BadValueException("day", day, "write it as year-month-day, for example 2026-01-10"));
    }
    return problems.isEmpty()
        ? Optional.of(new PieceDeveloped(really, warm, on))
        : Optional.empty();
  }

  /**
   * The same, or refused.
   *
   * @throws BadValueException the first problem
   */
  public PieceDeveloped require(Duration planned, LocalDate today, Units units) {
    Map<String, BadValueException> problems = new LinkedHashMap<>();
    return read(planned, today, units, problems)
        .orElseThrow(() -> problems.values().iterator().next());
  }
}
