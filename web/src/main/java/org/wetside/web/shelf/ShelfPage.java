package org.wetside.web.shelf;

import java.util.List;
import org.wetside.web.page.Sheet;

/**
 * Model of the Shelf.
 *
 * @param sheet the sheet
 * @param bottles the bottles by letter
 */
public record ShelfPage(Sheet sheet, List<BottleLine> bottles) {
  private static final List<String> SMALL_COUNTS =
      List.of("No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine", "Ten");

  /** The first half of the opening sentence. */
  public String count() {
    int count = bottles.size();
    String words = count < SMALL_COUNTS.size() ? SMALL_COUNTS.get(count) : Integer.toString(count);
    return words + (count == 1 ? " bottle stands here" : " bottles stand here");
  }

  /** The bottles with less than a tenth left. */
  public List<BottleLine> low() {
    return bottles.stream().filter(BottleLine::low).toList();
  }

  /** Said in the tab. */
  static String title(int count) {
    return count == 0 ? "An empty shelf" : count + (count == 1 ? " bottle" : " bottles");
  }
}
