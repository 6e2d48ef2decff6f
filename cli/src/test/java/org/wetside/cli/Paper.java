package org.wetside.cli;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * A PDF that a command wrote, read back.
 *
 * @param pages how many
 * @param text all of it, spaces run together
 * @param widthMm of the first page
 */
record Paper(int pages, String text, double widthMm) {
  private static final double MM_PER_POINT = 25.4 / 72;

  static Paper of(Path file) throws IOException {
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      return new Paper(
          document.getNumberOfPages(),
          new PDFTextStripper().getText(document).replaceAll("\\s+", " "),
          document.getPage(0).getMediaBox().getWidth() * MM_PER_POINT);
    }
  }
}
