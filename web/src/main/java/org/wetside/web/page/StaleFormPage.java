package org.wetside.web.page;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;

/**
 * Model of the page that answers a form without the mark of its browser: what happened, and what
 * was typed, to be sent again.
 *
 * @param sheet the sheet
 * @param cookie whether this browser keeps the cookie at all
 * @param action where the form was sent
 * @param typed what was typed, in its order
 * @param file whether it carried files, which no page can keep
 */
public record StaleFormPage(
    Sheet sheet, boolean cookie, String action, List<Typed> typed, boolean file) {
  /**
   * One field.
   *
   * @param name of the field
   * @param value what stood in it
   */
  public record Typed(String name, String value) {}

  /** Of the form that was just sent. */
  public static StaleFormPage of(Sheet sheet, Context ctx) {
    List<Typed> typed = new ArrayList<>();
    ctx.formParamMap()
        .forEach(
            (name, values) -> {
              if (!name.equals(FormTokens.FIELD)) {
                values.forEach(value -> typed.add(new Typed(name, value)));
              }
            });
    String query = ctx.queryString();
    String action = ctx.path() + (query == null ? "" : "?" + query);
    return new StaleFormPage(
        sheet, FormTokens.hasCookie(ctx), action, typed, ctx.isMultipartFormData());
  }

  /** Whether there is something a person would want to see again. */
  public boolean hasWords() {
    return typed.stream().anyMatch(one -> !one.value().isBlank());
  }
}
