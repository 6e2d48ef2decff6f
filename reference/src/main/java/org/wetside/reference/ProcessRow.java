package org.wetside.reference;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wetside.core.process.AfterUse;
import org.wetside.core.process.AgitationSchedule;
import org.wetside.core.process.Cycle;
import org.wetside.core.process.Light;
import org.wetside.core.process.LongestTime;
import org.wetside.core.process.Manner;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.TimeSpan;

/** Turns one row of a file of steps into a step. */
final class ProcessRow {
  private ProcessRow() {}

  static Step toStep(ReferenceRow row) {
    StepKind kind = StepKind.fromWord(row.text("kind"));
    Optional<Duration> time = seconds(row, "time_s");
    Optional<Duration> longest = seconds(row, "longest_s");
    return new Step(
        kind,
        given(row, "bottle"),
        time,
        TimeSpan.ofSeconds(row.number("pour_in_s")),
        TimeSpan.ofSeconds(row.number("drain_lead_s")),
        agitation(row),
        band(row),
        new AfterUse(given(row, "after").filter(where -> !where.equals("discard"))),
        Light.fromWord(row.text("light")),
        longest.or(() -> time.flatMap(known -> LongestTime.of(kind, known))),
        row.standing(),
        cited(row));
  }

  private static AgitationSchedule agitation(ReferenceRow row) {
    return new AgitationSchedule(
        Manner.fromWord(row.text("manner")),
        given(row, "initial").map(ProcessRow::cycle),
        seconds(row, "interval_s").orElse(Duration.ZERO),
        given(row, "cycle").map(ProcessRow::cycle),
        row.text("tap").equals("yes"),
        row.maybeNumber("rpm").orElse(0));
  }

  /** {@code 30s} in seconds, {@code 10x} in turns. */
  private static Cycle cycle(String text) {
    return text.endsWith("x")
        ? Cycle.ofInversions(Integer.parseInt(text.substring(0, text.length() - 1)), Cycle.PACE)
        : Cycle.ofLength(TimeSpan.parse("agitation cycle", text));
  }

  private static Optional<TemperatureRange> band(ReferenceRow row) {
    OptionalDouble low = row.maybeNumber("low_c");
    OptionalDouble high = row.maybeNumber("high_c");
    return low.isPresent() && high.isPresent()
        ? Optional.of(
            new TemperatureRange(
                Temperature.ofCelsius(low.getAsDouble()),
                Temperature.ofCelsius(high.getAsDouble())))
        : Optional.empty();
  }

  private static String cited(ReferenceRow row) {
    String ids = String.join(" ", row.sourceIds());
    String place = row.text("locator").isEmpty() ? ids : ids + ", " + row.text("locator");
    return row.note().isEmpty() ? place : place + ": " + row.note();
  }

  private static Optional<Duration> seconds(ReferenceRow row, String column) {
    OptionalDouble seconds = row.maybeNumber(column);
    return seconds.isPresent()
        ? Optional.of(TimeSpan.ofSeconds(seconds.getAsDouble()))
        : Optional.empty();
  }

  private static Optional<String> given(ReferenceRow row, String column) {
    return Optional.of(row.text(column)).filter(text -> !text.isEmpty());
  }
}
