package org.wetside.web.shelf;

import java.util.List;
import java.util.Locale;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the recall list.
 *
 * @param sheet the sheet
 * @param rolls the rolls that are to be fixed again, the first fixed first
 * @param form what was typed
 * @param cautions of the fixer that they go through again; empty when none does
 */
public record RecallPage(
    Sheet sheet, List<Line> rolls, FilledForm form, List<CautionView> cautions) {
  /** What was typed for that roll and refused; empty otherwise. */
  public String typed(Line roll, String field) {
    return form.isRefused() && form.value("roll").equals(roll.number()) ? form.value(field) : "";
  }

  /**
   * One roll.
   *
   * @param key names its fields on the page
   * @param number its number; may be empty
   * @param film what it is
   * @param sleeve where the negatives are; may be empty
   * @param owner whose they are; may be empty
   * @param bottle bottle and contents
   * @param when when it was fixed
   */
  public record Line(
      int key,
      String number,
      String film,
      String sleeve,
      String owner,
      String bottle,
      String when) {
    /** Its number, or that it has none. */
    public String name() {
      return number.isEmpty() ? "A roll the old book did not name" : number;
    }

    /** Where the negatives are, with the word for it where the user left that out. */
    public String sleeveWords() {
      return sleeve.toLowerCase(Locale.ROOT).startsWith("sleeve") ? sleeve : "sleeve " + sleeve;
    }
  }
}
