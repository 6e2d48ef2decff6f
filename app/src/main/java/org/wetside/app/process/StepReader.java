package org.wetside.app.process;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.wetside.core.process.AfterUse;
import org.wetside.core.process.AgitationSchedule;
import org.wetside.core.process.AgitationText;
import org.wetside.core.process.Light;
import org.wetside.core.process.LongestTime;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.source.Standing;

/** Reads one step as it was typed; every complaint is kept beside its field. */
final class StepReader {
  private static final String FROM_THE_LOAD = "from the load";
  private static final int LONGEST_SOURCE = 500;

  private final int number;
  private final StepDraft draft;
  private final List<ProcessFault> faults;

  /**
   * @param number of the step, from 1
   * @param draft as typed
   * @param faults where complaints go
   */
  StepReader(int number, StepDraft draft, List<ProcessFault> faults) {
    this.number = number;
    this.draft = draft;
    this.faults = faults;
  }

  /** The step; empty when a complaint was noted. */
  Optional<Step> read() {
    int before = faults.size();
    Optional<StepKind> kind = field(StepField.KIND, StepKind::fromWord);
    if (kind.isEmpty()) {
      refuse(StepField.KIND, new BadValueException("kind of step", "", "it is needed"), before);
      return Optional.empty();
    }
    boolean wet = kind.get().wet();
    Optional<String> bottle = field(StepField.BOTTLE, text -> letter(kind.get(), text));
    Optional<Duration> time = field(StepField.TIME, this::time);
    Optional<TemperatureRange> band = field(StepField.TEMPERATURE, StepReader::band);
    Optional<AgitationSchedule> agitation = field(StepField.AGITATION, AgitationText::parse);
    Optional<AfterUse> after = field(StepField.AFTERWARDS, text -> after(text, bottle));
    Optional<Light> light = field(StepField.LIGHT, text -> light(kind.get(), text));
    Optional<Duration> pour = field(StepField.POUR_IN, text -> span("pour-in time", text));
    Optional<Duration> drain = field(StepField.DRAIN, text -> span("drain lead", text));
    Optional<Duration> longest = field(StepField.LONGEST, text -> span("longest time", text));
    Optional<String> source = field(StepField.SOURCE, StepReader::source);
    if (faults.size() > before) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new Step(
              kind.get(),
              bottle,
              time,
              pour.orElse(wet ? Step.POUR_IN : Duration.ZERO),
              drain.orElse(wet ? Step.DRAIN_LEAD : Duration.ZERO),
              agitation.orElseGet(AgitationSchedule::none),
              band,
              after.orElseGet(AfterUse::discard),
              light.orElse(wet ? Light.DARK : Light.REQUIRED),
              longest.or(() -> time.flatMap(known -> LongestTime.of(kind.get(), known))),
              Standing.FROM_MEMORY,
              source.orElse(StepDraft.UNSOURCED)));
    } catch (BadValueException refusal) {
      refuse(fieldOf(refusal), refusal, before);
      return Optional.empty();
    }
  }

  private <T> Optional<T> field(StepField field, Function<String, T> read) {
    String typed = draft.value(field);
    boolean open = field == StepField.TIME && typed.equalsIgnoreCase(FROM_THE_LOAD);
    if (typed.isEmpty() || open) {
      return Optional.empty();
    }
    try {
      return Optional.of(read.apply(typed));
    } catch (BadValueException refusal) {
      faults.add(new ProcessFault(number, field.word(), String.valueOf(refusal.getMessage())));
      return Optional.empty();
    }
  }

  /** Adds a complaint unless reading the fields has brought one already. */
  private void refuse(StepField field, BadValueException refusal, int before) {
    if (faults.size() == before) {
      faults.add(new ProcessFault(number, field.word(), String.valueOf(refusal.getMessage())));
    }
  }

  private static StepField fieldOf(BadValueException refusal) {
    String thing = refusal.thing();
    if (thing.endsWith("pour-in time")) {
      return StepField.POUR_IN;
    }
    if (thing.endsWith("drain lead")) {
      return StepField.DRAIN;
    }
    if (thing.endsWith("longest time")) {
      return StepField.LONGEST;
    }
    return thing.endsWith("time") ? StepField.TIME : StepField.KIND;
  }

  private Duration time(String text) {
    return span("time", text);
  }

  private static Duration span(String thing, String text) {
    return TimeSpan.parse(thing, text);
  }

  /** A bare pair of numbers is in °C, as the label says. */
  private static TemperatureRange band(String text) {
    return TemperatureRange.parse(
        text.matches(".*[CcFf]\\s*|.*[CcFf]\\s*±.*") ? text : text + " C");
  }

  private static String letter(StepKind kind, String text) {
    String letter = text.toUpperCase(Locale.ROOT);
    if (kind.water() || !kind.wet()) {
      throw new BadValueException(
          "bottle", letter, "a " + kind.word() + " comes from no bottle; leave it empty");
    }
    if (!letter.matches("[\\p{L}\\p{N}]{1,3}")) {
      throw new BadValueException("letter of the bottle", letter, "one to three letters or digits");
    }
    return letter;
  }

  private AfterUse after(String text, Optional<String> bottle) {
    String typed = text.toLowerCase(Locale.ROOT);
    if (typed.equals("discard")) {
      return AfterUse.discard();
    }
    if (typed.equals("back") && !draft.value(StepField.BOTTLE).isEmpty()) {
      // a letter that was refused is complained of once, beside its own field
      return bottle.map(AfterUse::backTo).orElseGet(AfterUse::discard);
    }
    String to = text.replaceFirst("(?i)^back( to)?( bottle)?\\s*", "").strip();
    if (!typed.startsWith("back ") || !to.matches("[\\p{L}\\p{N}]{1,3}")) {
      throw new BadValueException(
          "afterwards",
          text,
          typed.equals("back")
              ? "say to which bottle, for example back to bottle F"
              : "write discard, back, or back to bottle F");
    }
    return AfterUse.backTo(to.toUpperCase(Locale.ROOT));
  }

  private static Light light(StepKind kind, String text) {
    Light light = Light.fromWord(text.toLowerCase(Locale.ROOT));
    if (kind.wet() == (light == Light.REQUIRED)) {
      throw new BadValueException(
          "light", text, kind.wet() ? "choose dark or any" : "a re-exposure requires it");
    }
    return light;
  }

  private static String source(String text) {
    if (text.length() > LONGEST_SOURCE) {
      throw new BadValueException(
          "source", text.length() + " characters", "at most " + LONGEST_SOURCE + " characters");
    }
    return text;
  }
}
