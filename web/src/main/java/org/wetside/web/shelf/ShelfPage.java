package org.wetside.web.shelf;

import java.util.List;
import org.wetside.web.page.Count;
import org.wetside.web.page.Sheet;

/**
 * Model of the Shelf.
 *
 * @param sheet the sheet
 * @param bottles the bottles by letter
 * @param recalled how many rolls are to be fixed again
 */
public record ShelfPage(Sheet sheet, List<BottleLine> bottles, int recalled) {
  /** The first half of the opening sentence. */
  public String count() {
    return Count.of(bottles.size(), "bottle stands here", "bottles stand here");
  }

  /** The bottles with less than a tenth left. */
  public List<BottleLine> low() {
    return bottles.stream().filter(BottleLine::low).toList();
  }

  /** The bottles that are not simply to be used. */
  public List<BottleLine> doubtful() {
    return bottles.stream().filter(bottle -> !bottle.verdict().verdict().equals("use")).toList();
  }

  /** Said in the tab. */
  static String title(int count) {
    return count == 0 ? "An empty shelf" : count + (count == 1 ? " bottle" : " bottles");
  }
}
