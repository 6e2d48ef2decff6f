package org.wetside.web.page;

import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.BadValueException;

/**
 * What a person typed, and what is to be said about it: a refused form is drawn from it again, so
 * nothing typed is lost.
 *
 * @param values what stands in each field, by its name
 * @param messages what is wrong, by the field's name; under {@link #WHOLE} what concerns the whole
 */
public record FilledForm(Map<String, String> values, Map<String, String> messages) {
  /** The name under which a message concerns no single field. */
  public static final String WHOLE = "";

  /** Keeps unmodifiable copies. */
  public FilledForm {
    values = Map.copyOf(values);
    messages = Map.copyOf(messages);
  }

  /** A form nobody has touched. */
  public static FilledForm empty() {
    return new FilledForm(Map.of(), Map.of());
  }

  /** A form opened with values in it. */
  public static FilledForm of(Map<String, String> values) {
    return new FilledForm(values, Map.of());
  }

  /** As it came in; of a field that came twice, the first. */
  public static FilledForm of(Context ctx) {
    Map<String, String> values = new LinkedHashMap<>();
    for (Map.Entry<String, List<String>> field : ctx.formParamMap().entrySet()) {
      values.put(field.getKey(), field.getValue().isEmpty() ? "" : field.getValue().get(0));
    }
    values.remove(FormTokens.FIELD);
    return of(values);
  }

  /** What stands in the field, without blanks around it; empty when it is absent. */
  public String value(String name) {
    return values.getOrDefault(name, "").strip();
  }

  /** What is wrong with the field; null when nothing is. */
  public @Nullable String message(String name) {
    return messages.get(name);
  }

  /** Whether the field is empty or absent. */
  public boolean isBlank(String name) {
    return value(name).isEmpty();
  }

  /** Whether anything was found wrong. */
  public boolean isRefused() {
    return !messages.isEmpty();
  }

  /** The same form with a message beside one field. */
  public FilledForm saying(String name, String message) {
    Map<String, String> more = new LinkedHashMap<>(messages);
    more.put(name, message);
    return new FilledForm(values, more);
  }

  /** The same form with the message of that refusal beside one field. */
  public FilledForm saying(String name, BadValueException refusal) {
    return saying(name, String.valueOf(refusal.getMessage()));
  }
}
