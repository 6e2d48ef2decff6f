package org.wetside.web.shelf;

import java.util.List;
import java.util.Map;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the page of fixers that are used two after each other.
 *
 * @param sheet the sheet
 * @param pairs those in use
 * @param free fixers that are in no pair, by letter, with what they are
 * @param fresh those of them that no film has gone through
 * @param jugs waste jugs that take fixer, by name; the empty name says that nobody says where
 * @param form what was typed
 */
public record FixersPage(
    Sheet sheet,
    List<Pair> pairs,
    Map<String, String> free,
    Map<String, String> fresh,
    Map<String, String> jugs,
    FilledForm form) {
  /**
   * A pair.
   *
   * @param first letter of the bottle that is used first
   * @param second letter of the one used second
   * @param verdict on the first
   * @param spent whether the first is known to be spent
   * @param movesDown whether the second becomes the first; otherwise both are discarded
   * @param next what to do when the first is spent
   * @param cautions for pouring it away
   */
  public record Pair(
      String first,
      String second,
      VerdictView verdict,
      boolean spent,
      boolean movesDown,
      String next,
      List<CautionView> cautions) {
    /** Name of the field that says the fresh one. */
    public String freshField() {
      return "fresh-" + first;
    }

    /** Name of the field that says where it goes. */
    public String jugField() {
      return "jug-" + first;
    }
  }
}
