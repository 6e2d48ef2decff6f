package org.wetside.web.drawer;

import java.util.List;
import java.util.Map;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;
import org.wetside.web.rolls.FilmTestLine;
import org.wetside.web.rolls.RollRow;

/**
 * Model of the page of one roll in the drawer.
 *
 * @param sheet the sheet
 * @param roll the roll as it is
 * @param form what may be changed, as typed
 * @param tests what tests say of its washing, and of its fixers since
 * @param films films that may be meant, by their code; empty when it is decided
 * @param ownIndexes own indexes of this film that are in use, in words; empty without any
 */
public record RollPage(
    Sheet sheet,
    RollRow roll,
    FilledForm form,
    List<FilmTestLine> tests,
    Map<String, String> films,
    String ownIndexes) {
  /** Sizes to choose from. */
  public Map<String, String> sizes() {
    return RollForm.sizes();
  }

  /** Kinds to choose from. */
  public Map<String, String> kinds() {
    return RollForm.kinds();
  }
}
