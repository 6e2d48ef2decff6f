package org.wetside.app.checks;

import java.util.Optional;

/**
 * One check before the first pour.
 *
 * @param group what it belongs to
 * @param id stands in the record; letters, digits and dashes
 * @param text what it is about and how it stands
 * @param state open, done by data, or a warning
 * @param advice what to do; empty when there is nothing to do
 * @param step index of the bath it is about, where it is about one
 */
public record Check(
    CheckGroup group,
    String id,
    String text,
    CheckState state,
    String advice,
    Optional<Integer> step) {

  static Check of(CheckGroup group, String id, String text, CheckState state, String advice) {
    return new Check(group, id, text, state, advice, Optional.empty());
  }

  /** Whether nothing is left to be said of it. */
  public boolean done() {
    return state == CheckState.DONE;
  }
}
