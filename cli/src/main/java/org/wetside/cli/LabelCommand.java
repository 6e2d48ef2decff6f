package org.wetside.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.Units;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.paper.LabelPdf;
import org.wetside.web.paper.LabelView;
import org.wetside.web.paper.LabelWish;
import org.wetside.web.paper.LabelsView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside label D F --pdf labels.pdf}. */
@Command(name = "label", description = "Print labels of bottles, or write them as a PDF.")
final class LabelCommand extends HomeCommand<LabelsView> {
  @Parameters(
      arity = "0..*",
      paramLabel = "LETTER",
      description = "bottles on the shelf; all when none is said")
  List<String> letters = List.of();

  @Option(names = "--pdf", paramLabel = "FILE", description = "write labels to print")
  @Nullable String pdf;

  @Option(
      names = "--single",
      description = "each on a page of its own size, for a printer of labels")
  boolean single;

  @Option(names = "--paper", paramLabel = "PAPER", description = "a4 when not said, or letter")
  @Nullable String paper;

  @Option(names = "--force", description = "replace the file if it is there")
  boolean force;

  private Optional<PaperFile> file = Optional.empty();

  @Override
  LabelsView answerHere(Wetside wetside) {
    file = file();
    return wish().labels(wetside, SheetCommand.USUAL_ADDRESS);
  }

  @Override
  Optional<LabelsView> answerThere(ServerCall server) {
    file = file();
    return super.answerThere(server);
  }

  /** The server says where its pages are found; the paper is drawn here. */
  @Override
  void received(LabelsView labels) {
    file.ifPresent(
        wanted ->
            wanted.write(
                single
                    ? LabelPdf.single(labels, Units.METRIC)
                    : LabelPdf.sheet(labels, Units.METRIC, wish().format())));
  }

  @Override
  ServerRequest request() {
    return ServerRequest.get("/api/labels")
        .with("bottles", letters.isEmpty() ? null : String.join(",", letters))
        .with("paper", paper);
  }

  private LabelWish wish() {
    return new LabelWish(String.join(",", letters), paper);
  }

  private Optional<PaperFile> file() {
    return PaperFile.of("file of the labels", pdf, force);
  }

  @Override
  Class<LabelsView> view() {
    return LabelsView.class;
  }

  @Override
  void print(LabelsView labels, PrintWriter out) {
    if (pdf != null) {
      int count = labels.labels().size();
      out.println(pdf + ": " + count + (count == 1 ? " label" : " labels"));
      return;
    }
    for (LabelView label : labels.labels()) {
      out.println(
          label.letter()
              + "  "
              + label.contents()
              + ", "
              + label.role()
              + (label.dilution().isEmpty() ? "" : " " + label.dilution())
              + "  "
              + Metric.volume(label.fullMl())
              + "  "
              + label.bath());
      out.println("   mixed " + day(label.mixedOn()) + "  opened " + day(label.openedOn()));
      for (CautionView caution : label.cautions()) {
        out.println("   Caution: " + caution.text() + " (" + caution.source() + ")");
      }
      out.println("   " + label.address());
    }
  }

  private static String day(@Nullable String day) {
    return day == null ? "-" : day;
  }
}
