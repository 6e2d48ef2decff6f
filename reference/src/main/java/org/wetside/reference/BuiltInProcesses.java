package org.wetside.reference;

import java.util.ArrayList;
import java.util.List;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.Step;

/** The processes that come with the program: the files under {@code processes}. */
public final class BuiltInProcesses {
  private BuiltInProcesses() {}

  /** All of them, in the order of the file. */
  public static List<FilmProcess> all() {
    return read("processes/catalogue", "processes/steps");
  }

  /**
   * Ways to wash, each as a run of steps that can stand in place of the wash of a process ({@link
   * FilmProcess#withWash}).
   */
  public static List<FilmProcess> washes() {
    return read("processes/washes", "processes/wash_steps");
  }

  private static List<FilmProcess> read(String catalogue, String steps) {
    List<ReferenceRow> rows = ReferenceTable.open(steps).rows();
    List<FilmProcess> processes = new ArrayList<>();
    for (ReferenceRow entry : ReferenceTable.open(catalogue).rows()) {
      String slug = entry.text("process");
      List<Step> own =
          rows.stream()
              .filter(row -> row.text("process").equals(slug))
              .map(ProcessRow::toStep)
              .toList();
      processes.add(new FilmProcess(slug, entry.text("name"), entry.text("about"), true, own));
    }
    return processes;
  }
}
