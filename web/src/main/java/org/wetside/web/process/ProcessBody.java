package org.wetside.web.process;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wetside.app.process.ProcessDraft;
import org.wetside.app.process.StepDraft;
import org.wetside.app.process.StepField;

/**
 * A process as it is wished for, every part as it would be typed.
 *
 * @param process short name; null to make it from the name
 * @param name as people call it
 * @param about what it is for
 * @param steps in order
 */
public record ProcessBody(
    @Nullable String process,
    @Nullable String name,
    @Nullable String about,
    @Nullable List<StepBody> steps) {
  /**
   * A step; what is null is left empty.
   *
   * @param kind its word
   * @param bottle letter
   * @param time {@code 5:00}; null where the load says it
   * @param temperature {@code 18.3 to 23.9 °C}
   * @param agitation {@code 30 s, then 5 s every 60 s, tap}
   * @param afterwards {@code discard}, {@code back}, {@code back to bottle F}
   * @param light {@code dark} or {@code any}
   * @param pourIn {@code 10 s}
   * @param drain {@code 15 s}
   * @param longest {@code 10:00}; null for the rule of its kind
   * @param source what its values are cited from
   */
  public record StepBody(
      @Nullable String kind,
      @Nullable String bottle,
      @Nullable String time,
      @Nullable String temperature,
      @Nullable String agitation,
      @Nullable String afterwards,
      @Nullable String light,
      @Nullable String pourIn,
      @Nullable String drain,
      @Nullable String longest,
      @Nullable String source) {
    static StepBody of(StepDraft draft) {
      return new StepBody(
          draft.value(StepField.KIND),
          draft.value(StepField.BOTTLE),
          draft.value(StepField.TIME),
          draft.value(StepField.TEMPERATURE),
          draft.value(StepField.AGITATION),
          draft.value(StepField.AFTERWARDS),
          draft.value(StepField.LIGHT),
          draft.value(StepField.POUR_IN),
          draft.value(StepField.DRAIN),
          draft.value(StepField.LONGEST),
          draft.value(StepField.SOURCE));
    }

    StepDraft draft() {
      Map<StepField, String> fields = new EnumMap<>(StepField.class);
      put(fields, StepField.KIND, kind);
      put(fields, StepField.BOTTLE, bottle);
      put(fields, StepField.TIME, time);
      put(fields, StepField.TEMPERATURE, temperature);
      put(fields, StepField.AGITATION, agitation);
      put(fields, StepField.AFTERWARDS, afterwards);
      put(fields, StepField.LIGHT, light);
      put(fields, StepField.POUR_IN, pourIn);
      put(fields, StepField.DRAIN, drain);
      put(fields, StepField.LONGEST, longest);
      put(fields, StepField.SOURCE, source);
      return new StepDraft(fields);
    }

    private static void put(
        Map<StepField, String> fields, StepField field, @Nullable String typed) {
      if (typed != null) {
        fields.put(field, typed);
      }
    }
  }

  /** The body that says the same as a draft. */
  public static ProcessBody of(ProcessDraft draft) {
    return new ProcessBody(
        draft.slug(),
        draft.name(),
        draft.about(),
        draft.steps().stream().map(StepBody::of).toList());
  }

  /** As it was typed. */
  public ProcessDraft draft() {
    return new ProcessDraft(
        process == null ? "" : process,
        name == null ? "" : name,
        about == null ? "" : about,
        steps == null ? List.of() : steps.stream().map(StepBody::draft).toList());
  }
}
