package org.wetside.web.testroll;

import java.util.List;
import org.wetside.web.page.Sheet;

/**
 * Model of the page of all test rolls.
 *
 * @param sheet the sheet
 * @param lines a line for each, the newest first
 */
public record TestRollsPage(Sheet sheet, List<Line> lines) {
  /** Keeps an unmodifiable copy. */
  public TestRollsPage {
    lines = List.copyOf(lines);
  }

  /**
   * One roll.
   *
   * @param path of its page
   * @param title film and developer
   * @param next what is done next; empty when all is done
   * @param done how many steps were ticked
   * @param steps how many there are
   * @param begun the day
   */
  public record Line(String path, String title, String next, int done, int steps, String begun) {}

  /** How many are not finished. */
  public long open() {
    return lines.stream().filter(line -> !line.next().isEmpty()).count();
  }
}
