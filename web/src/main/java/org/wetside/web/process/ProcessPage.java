package org.wetside.web.process;

import java.util.List;
import org.wetside.core.process.FilmProcess;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the page of one process.
 *
 * @param sheet the sheet
 * @param process the process
 * @param steps its steps
 * @param length from the first pour to hanging; empty where the load says how long it develops
 * @param development time the cues are shown with; empty where the process says it itself
 * @param cues its cues by the clock
 * @param using loads not yet done that are led by it
 * @param warnings baths that should not follow one another as they are
 * @param copy the form that makes a copy
 */
public record ProcessPage(
    Sheet sheet,
    FilmProcess process,
    List<ProcessStepLine> steps,
    String length,
    String development,
    List<CueLine> cues,
    List<Long> using,
    List<OrderWarningView> warnings,
    FilledForm copy) {
  /**
   * A cue in words.
   *
   * @param at from the beginning of the first pour
   * @param bath its bath
   * @param text what is asked for
   */
  public record CueLine(String at, String bath, String text) {}
}
