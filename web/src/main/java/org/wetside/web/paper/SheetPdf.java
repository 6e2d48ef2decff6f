package org.wetside.web.paper;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.DefaultObjectDrawerFactory;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.wetside.core.quantity.Units;

/**
 * The run sheet as a PDF of one page, on A4 or US Letter. The lines stand as wide as fits; a run
 * that fits in no way at a size that can be read goes on on a second page.
 */
public final class SheetPdf {
  private static final String TEMPLATE = "paper/run-sheet.jte";

  private SheetPdf() {}

  /** The bytes of the file, in those units, on that paper; A4 for what is not {@code letter}. */
  public static byte[] of(SheetView sheet, Units units, SheetWish.Paper paper) {
    SheetWords words = new SheetWords(sheet, units);
    Tape tape = Tape.of(sheet, words);
    try {
      byte[] smallest = new byte[0];
      for (SheetPage.Room room : SheetPage.Room.values()) {
        boolean last = room == SheetPage.Room.FINE;
        SheetPage page =
            new SheetPage(
                sheet,
                words,
                SheetRow.of(sheet, words, room.isBrief()),
                tape,
                room,
                paper.word(),
                PaperPdf.style("run-sheet.css"));
        smallest = rendered(page, last);
        if (smallest.length > 0) {
          break;
        }
      }
      return smallest;
    } catch (IOException broken) {
      throw new UncheckedIOException("the run sheet cannot be written", broken);
    }
  }

  /** Nothing when it takes more than a page and that is not wanted. */
  private static byte[] rendered(SheetPage page, boolean anyLength) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (PdfBoxRenderer renderer = builder(page).toStream(bytes).buildPdfRenderer()) {
      renderer.layout();
      if (!anyLength && renderer.getRootBox().getLayer().getPages().size() > 1) {
        return new byte[0];
      }
      renderer.createPDF();
    }
    return bytes.toByteArray();
  }

  private static PdfRendererBuilder builder(SheetPage page) {
    DefaultObjectDrawerFactory drawers = new DefaultObjectDrawerFactory();
    drawers.registerDrawer(SheetDrawings.TYPE, new SheetDrawings(page.sheet(), page.tape()));
    return PaperPdf.builder(TEMPLATE, page).useObjectDrawerFactory(drawers);
  }
}
