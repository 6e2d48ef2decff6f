package org.wetside.cli;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Units;
import org.wetside.web.waste.JugView;
import org.wetside.web.waste.WastePaper;
import picocli.CommandLine.Option;

/** The two papers of a jug: the sheet to hand in with it, and its label. */
final class WastePaperOptions {
  @Option(names = "--pdf", paramLabel = "FILE", description = "write its sheet to hand in with it")
  @Nullable String pdf;

  @Option(names = "--label", description = "with --pdf: the label of the jug instead")
  boolean label;

  @Option(names = "--paper", paramLabel = "PAPER", description = "a4 when not said, or letter")
  @Nullable String paper;

  @Option(names = "--force", description = "replace the file if it is there")
  boolean force;

  /**
   * The file to write, looked at before anything is asked.
   *
   * @throws BadValueException when it cannot be written, or is not named although the label is
   *     wanted
   */
  Optional<PaperFile> file() {
    if (pdf == null && label) {
      throw new BadValueException("label of the jug", "", "say where to, with --pdf FILE");
    }
    return PaperFile.of("file of the paper", pdf, force);
  }

  void write(PaperFile file, JugView jug, LocalDate today) {
    WastePaper drawn = WastePaper.of(jug, Units.METRIC, today, paper);
    file.write(label ? drawn.label() : drawn.handInSheet());
  }

  /** What was written. */
  String said(JugView jug) {
    return pdf + ": the " + (label ? "label of" : "sheet to hand in with") + " jug " + jug.jug();
  }
}
