package org.wetside.web.process;

import java.util.List;
import java.util.stream.Collectors;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.Step;
import org.wetside.web.page.Sheet;

/**
 * Model of the page of all processes.
 *
 * @param sheet the sheet
 * @param own the person's own
 * @param builtIn those that came with the program
 */
public record ProcessListPage(Sheet sheet, List<Line> own, List<Line> builtIn) {
  /**
   * A process in words.
   *
   * @param slug short name
   * @param name as people call it
   * @param about what it is for
   * @param baths its steps, one after the other
   */
  public record Line(String slug, String name, String about, String baths) {}

  static ProcessListPage of(Sheet sheet, List<FilmProcess> all) {
    return new ProcessListPage(sheet, lines(all, false), lines(all, true));
  }

  private static List<Line> lines(List<FilmProcess> all, boolean builtIn) {
    return all.stream()
        .filter(process -> process.builtIn() == builtIn)
        .map(
            process ->
                new Line(process.slug(), process.name(), process.about(), baths(process.steps())))
        .toList();
  }

  private static String baths(List<Step> steps) {
    return steps.stream().map(step -> step.kind().word()).collect(Collectors.joining(", "));
  }
}
