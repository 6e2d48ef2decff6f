package org.wetside.web.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.checks.Check;

/**
 * A check before the first pour.
 *
 * @param id goes into {@code ticked} or {@code passedOver} of the first pour
 * @param text what it is about and how it stands
 * @param group closing, handling, temperatures, bottles, stock or precious
 * @param state open, done by data, or warning
 * @param advice what to do; may be empty
 * @param step index of the bath it is about, or null
 */
public record CheckView(
    String id, String text, String group, String state, String advice, @Nullable Integer step) {

  /** The views of checks, in their order. */
  public static List<CheckView> all(List<Check> checks) {
    return checks.stream().map(CheckView::of).toList();
  }

  private static CheckView of(Check check) {
    return new CheckView(
        check.id(),
        check.text(),
        check.group().word(),
        check.state().word(),
        check.advice(),
        check.step().orElse(null));
  }
}
