package org.wetside.app.process;

import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.process.AgitationText;
import org.wetside.core.process.LongestTime;
import org.wetside.core.process.Step;
import org.wetside.core.quantity.TemperatureRange;

/**
 * A step as it is typed, every field a line of words.
 *
 * @param fields what was typed; a field that is absent was left empty
 */
public record StepDraft(Map<StepField, String> fields) {
  /** What a source says that was not given. */
  static final String UNSOURCED = "typed without a source";

  public StepDraft {
    fields = Map.copyOf(fields);
  }

  /** A step as it would be typed. */
  public static StepDraft of(Step step) {
    Map<StepField, String> fields = new EnumMap<>(StepField.class);
    fields.put(StepField.KIND, step.kind().word());
    step.bottle().ifPresent(letter -> fields.put(StepField.BOTTLE, letter));
    step.duration().ifPresent(time -> fields.put(StepField.TIME, clock(time)));
    step.band()
        .map(TemperatureRange::toString)
        .ifPresent(b -> fields.put(StepField.TEMPERATURE, b));
    fields.put(StepField.AGITATION, AgitationText.of(step.agitation()));
    Optional<String> back = step.afterUse().bottle();
    boolean own = back.isPresent() && back.equals(step.bottle());
    fields.put(StepField.AFTERWARDS, own ? "back" : step.afterUse().words());
    fields.put(StepField.LIGHT, step.light().word());
    fields.put(StepField.POUR_IN, seconds(step.pourIn()));
    fields.put(StepField.DRAIN, seconds(step.drainLead()));
    Optional<Duration> usual = step.duration().flatMap(time -> LongestTime.of(step.kind(), time));
    step.lengthenTo()
        .filter(limit -> !usual.equals(Optional.of(limit)))
        .ifPresent(limit -> fields.put(StepField.LONGEST, clock(limit)));
    if (!step.source().equals(UNSOURCED)) {
      fields.put(StepField.SOURCE, step.source());
    }
    return new StepDraft(fields);
  }

  /** What stands in a field, without blanks around it; empty when it was left empty. */
  public String value(StepField field) {
    return fields.getOrDefault(field, "").strip();
  }

  /** {@code 9:00}; {@code 97.5s} where it is no whole number of seconds. */
  private static String clock(Duration time) {
    if (time.toMillis() % 1000 != 0 || time.toMinutes() > 999) {
      return seconds(time);
    }
    return time.toMinutes() + (time.toSecondsPart() < 10 ? ":0" : ":") + time.toSecondsPart();
  }

  private static String seconds(Duration time) {
    return time.toMillis() % 1000 == 0 ? time.toSeconds() + " s" : time.toMillis() / 1000.0 + " s";
  }
}
