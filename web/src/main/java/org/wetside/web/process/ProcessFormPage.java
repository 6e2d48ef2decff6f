package org.wetside.web.process;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.wetside.core.process.StepKind;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the form of a process.
 *
 * @param sheet the sheet
 * @param slug short name of the one that is changed; null for a new one
 * @param form as typed
 * @param count how many steps it has
 */
public record ProcessFormPage(Sheet sheet, @Nullable String slug, FilledForm form, int count) {
  private static final Map<String, String> LIGHTS = eachLight();
  private static final Map<String, String> KINDS = eachKind();

  /** The steps, counted from 0. */
  public List<Integer> steps() {
    return IntStream.range(0, count).boxed().toList();
  }

  /** The name of a step's field. */
  public String name(int step, String field) {
    return "step-" + step + "-" + field;
  }

  /** What a step may be. */
  public Map<String, String> kinds() {
    return KINDS;
  }

  /** What light the film may see. */
  public Map<String, String> lightChoices() {
    return LIGHTS;
  }

  /** Where the form is sent. */
  public String address() {
    return slug == null ? "/processes/new" : "/processes/" + slug + "/change";
  }

  private static Map<String, String> eachKind() {
    Map<String, String> kinds = new LinkedHashMap<>();
    kinds.put("", "choose");
    for (StepKind kind : StepKind.values()) {
      kinds.put(kind.word(), kind.word());
    }
    return kinds;
  }

  private static Map<String, String> eachLight() {
    Map<String, String> lights = new LinkedHashMap<>();
    lights.put("", "as its kind needs");
    lights.put("dark", "dark, lid on");
    lights.put("any", "any light");
    lights.put("required", "light is needed");
    return lights;
  }
}
