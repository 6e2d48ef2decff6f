package org.wetside.web.process;

import java.util.List;
import org.wetside.app.process.CheckOrder;
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
 * @param warnings baths that should not follow one another as they are
 */
public record ProcessView(
    String process,
    String name,
    String about,
    boolean builtIn,
    String standing,
    List<ProcessStepView> steps,
    List<OrderWarningView> warnings) {
  /** The view of a process, its order checked with the bottles that stand on the shelf. */
  public static ProcessView of(FilmProcess process, CheckOrder order) {
    return new ProcessView(
        process.slug(),
        process.name(),
        process.about(),
        process.builtIn(),
        process.standing().word(),
        process.steps().stream().map(ProcessStepView::of).toList(),
        order.of(process).stream().map(OrderWarningView::of).toList());
  }
}
