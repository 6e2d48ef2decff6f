package org.wetside.web.equipment;

import java.util.List;
import java.util.Map;
import org.wetside.core.thermal.Water;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the page about the waters of the house.
 *
 * @param sheet the sheet
 * @param waters the one preferred for mixing first
 * @param form a water as it was typed
 * @param hardnesses words to choose from
 */
public record WatersPage(
    Sheet sheet, List<Water> waters, FilledForm form, Map<String, String> hardnesses) {

  /** What the hardness asks for; empty when it asks for nothing. */
  public String advice() {
    boolean hard = any(Water.Hardness.HARD);
    return !hard
        ? ""
        : any(Water.Hardness.DISTILLED)
            ? "Hard water leaves lime on drying film: take the distilled one for the last bath."
            : "Hard water leaves lime on drying film: have distilled water for the last bath.";
  }

  private boolean any(Water.Hardness hardness) {
    return waters.stream().anyMatch(water -> water.hardness() == hardness);
  }
}
