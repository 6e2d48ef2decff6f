package org.wetside.web.bench;

import java.util.List;
import org.wetside.web.page.Sheet;

/**
 * Model of the page of one run: the sheet is written by its scripts from the first snapshot;
 * without scripts the plan stands there as a table.
 *
 * @param sheet the sheet
 * @param sentence where the run stands, in one sentence
 * @param rows the plan by the clock
 * @param snapshotJson what the scripts start from, safe inside a page
 */
public record BenchPage(Sheet sheet, String sentence, List<Row> rows, String snapshotJson) {

  /** Makes the JSON safe to stand in a page: no tag can begin in it. */
  public BenchPage {
    rows = List.copyOf(rows);
    snapshotJson = snapshotJson.replace("<", "\\u003c");
  }

  /**
   * One bath of the plan.
   *
   * @param bath its word
   * @param bottle its letter; empty for water
   * @param from when the pour begins, on the reader's clock
   * @param drain when the drain begins
   * @param to when the next pour begins
   * @param agitation when to agitate, in words
   */
  public record Row(
      String bath, String bottle, String from, String drain, String to, String agitation) {}
}
