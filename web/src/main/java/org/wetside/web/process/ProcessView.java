package org.wetside.web.process;

import java.util.List;
import org.wetside.core.process.FilmProcess;

/**
 * A process over HTTP and on the command line.
 *
 * @param process its short name
 * @param name as people call it
 * @param about what it is for
 * @param builtIn whether it came with the program; such a one is copied, not changed
 * @param standing the weakest of its steps
 * @param steps in order
 */
public record ProcessView(
    String process,
    String name,
    String about,
    boolean builtIn,
    String standing,
    List<ProcessStepView> steps) {
  /** The view of a process. */
  public static ProcessView of(FilmProcess process) {
    return new ProcessView(
        process.slug(),
        process.name(),
        process.about(),
        process.builtIn(),
        process.standing().word(),
        process.steps().stream().map(ProcessStepView::of).toList());
  }
}
