package org.wetside.web.testroll;

import java.util.List;
import org.wetside.app.Wetside;

/**
 * The test rolls on file, as {@code GET /api/testrolls} answers.
 *
 * @param rolls the newest first
 */
public record KeptTestRollsView(List<KeptTestRollView> rolls) {
  /** Keeps an unmodifiable copy. */
  public KeptTestRollsView {
    rolls = List.copyOf(rolls);
  }

  /** Those of this home. */
  public static KeptTestRollsView of(Wetside wetside) {
    return new KeptTestRollsView(
        wetside.sensitometry().keepTestRolls().all().stream().map(KeptTestRollView::of).toList());
  }
}
