package org.wetside.cli;

import java.io.PrintWriter;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Units;
import org.wetside.web.paper.ReadSheet;
import org.wetside.web.paper.SheetPdf;
import org.wetside.web.paper.SheetText;
import org.wetside.web.paper.SheetView;
import org.wetside.web.paper.SheetWish;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside sheet 3 --pdf sheet.pdf}. */
@Command(name = "sheet", description = "Print the run sheet of a load, or write it as a PDF.")
final class SheetCommand extends HomeCommand<SheetView> {
  /** Where the program will be found when it is started without another port. */
  static final String USUAL_ADDRESS = "http://localhost:7373";

  @Parameters(paramLabel = "LOAD", description = "number of a load")
  @Nullable String load;

  @Option(names = "--pdf", paramLabel = "FILE", description = "write a page to print")
  @Nullable String pdf;

  @Option(
      names = "--start",
      paramLabel = "TIME",
      description = "when the first pour will be, such as 20:05")
  @Nullable String start;

  @Option(names = "--paper", paramLabel = "PAPER", description = "a4 when not said, or letter")
  @Nullable String paper;

  @Option(names = "--force", description = "replace the file if it is there")
  boolean force;

  @Override
  SheetView answerHere(Wetside wetside) {
    Optional<PaperFile> file = file();
    SheetWish wish = new SheetWish(start, paper);
    SheetView sheet = new ReadSheet(wetside, USUAL_ADDRESS).ofLoad(number(), wish);
    file.ifPresent(paper -> paper.write(SheetPdf.of(sheet, Units.METRIC, wish.format())));
    return sheet;
  }

  @Override
  Optional<SheetView> answerThere(ServerCall server) {
    Optional<PaperFile> file = file();
    Optional<SheetView> sheet = super.answerThere(server);
    boolean there =
        sheet.isPresent()
            && file.map(
                    paper -> server.copy(asked("/loads/" + number() + "/sheet.pdf"), paper::write))
                .orElse(true);
    return there ? sheet : Optional.empty();
  }

  @Override
  ServerRequest request() {
    return asked("/api/loads/" + number() + "/sheet");
  }

  @Override
  Class<SheetView> view() {
    return SheetView.class;
  }

  @Override
  void print(SheetView sheet, PrintWriter out) {
    if (pdf == null) {
      out.print(SheetText.of(sheet, Units.METRIC));
      out.flush();
    } else {
      out.println(pdf + ": the run sheet of load " + sheet.load());
    }
  }

  private ServerRequest asked(String path) {
    return ServerRequest.get(path).with("start", start).with("paper", paper);
  }

  private long number() {
    String text = String.valueOf(load).strip();
    if (!text.matches("\\d{1,9}")) {
      throw new BadValueException("load", text, "a whole number, for example 3");
    }
    return Long.parseLong(text);
  }

  private Optional<PaperFile> file() {
    return PaperFile.of("file of the sheet", pdf, force);
  }
}
