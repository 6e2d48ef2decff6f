package org.wetside.web.process;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.process.CheckOrder;
import org.wetside.app.process.ProcessText;
import org.wetside.core.process.FilmProcess;

/**
 * Processes, and one as a plain text.
 *
 * @param processes the built-in ones first
 * @param text the one that was asked for, to be edited and taken in again; null when not asked for
 */
public record ProcessesView(List<ProcessView> processes, @Nullable String text) {
  /** Several. */
  public static ProcessesView of(List<FilmProcess> processes, CheckOrder order) {
    return new ProcessesView(
        processes.stream().map(process -> ProcessView.of(process, order)).toList(), null);
  }

  /** One. */
  public static ProcessesView one(FilmProcess process, CheckOrder order) {
    return of(List.of(process), order);
  }

  /** One with its text. */
  public static ProcessesView withText(FilmProcess process, CheckOrder order) {
    return new ProcessesView(List.of(ProcessView.of(process, order)), ProcessText.of(process));
  }
}
