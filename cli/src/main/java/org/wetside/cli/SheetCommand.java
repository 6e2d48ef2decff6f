package org.wetside.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
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
  private static final String USUAL_ADDRESS = "http://localhost:7373";

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
    Optional<Path> file = file();
    SheetWish wish = new SheetWish(start, paper);
    SheetView sheet = new ReadSheet(wetside, USUAL_ADDRESS).ofLoad(number(), wish);
    file.ifPresent(
        path ->
            write(path, new ByteArrayInputStream(SheetPdf.of(sheet, Units.METRIC, wish.format()))));
    return sheet;
  }

  @Override
  Optional<SheetView> answerThere(ServerCall server) {
    Optional<Path> file = file();
    Optional<SheetView> sheet = super.answerThere(server);
    boolean there =
        sheet.isPresent()
            && file.map(
                    path ->
                        server.copy(
                            asked("/loads/" + number() + "/sheet.pdf"),
                            bytes -> write(path, bytes)))
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

  private Optional<Path> file() {
    if (pdf == null) {
      return Optional.empty();
    }
    Path path = Path.of(pdf);
    if (Files.isDirectory(path)) {
      throw new BadValueException("file of the sheet", pdf, "a file, not a folder");
    }
    if (Files.exists(path) && !force) {
      throw new BadValueException(
          "file of the sheet", pdf, "there is such a file; --force replaces it");
    }
    return Optional.of(path);
  }

  /** Whole or not at all. */
  private static void write(Path path, InputStream bytes) {
    try (bytes) {
      Path beside = path.resolveSibling(path.getFileName() + ".part");
      try {
        Files.copy(bytes, beside, StandardCopyOption.REPLACE_EXISTING);
        Files.move(beside, path, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(beside);
      }
    } catch (IOException failed) {
      throw new UncheckedIOException(new IOException("cannot write " + path, failed));
    }
  }
}
