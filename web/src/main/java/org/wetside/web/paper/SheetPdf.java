package org.wetside.web.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.DefaultObjectDrawerFactory;
import com.openhtmltopdf.util.XRLog;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.wetside.core.quantity.Units;

/**
 * The run sheet as a PDF of one page, on A4 or US Letter. The lines stand as wide as fits; a run
 * that fits in no way at a size that can be read goes on on a second page.
 */
public final class SheetPdf {
  private static final String TEMPLATE = "paper/run-sheet.jte";
  private static final int REGULAR = 400;
  private static final int BOLD = 700;

  /** What XML 1.0 has no place for. */
  private static final String NO_CHARACTERS = "[^\\x09\\x0A\\x0D\\x20-\\uD7FF\\uE000-\\uFFFD]";

  private SheetPdf() {}

  /** The bytes of the file, in those units, on that paper; A4 for what is not {@code letter}. */
  public static byte[] of(SheetView sheet, Units units, SheetWish.Paper paper) {
    XRLog.setLoggingEnabled(false);
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
                text("run-sheet.css"));
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
    PdfRendererBuilder builder =
        new PdfRendererBuilder()
            .useFastMode()
            .withHtmlContent(markup(page), null)
            .useUriResolver((base, uri) -> null)
            .useObjectDrawerFactory(drawers)
            .withProducer("Wetside");
    face(builder, "archivo-narrow-400-normal", "Narrow", REGULAR, FontStyle.NORMAL);
    face(builder, "archivo-narrow-700-normal", "Narrow", BOLD, FontStyle.NORMAL);
    face(builder, "source-serif-4-400-normal", "Handbook", REGULAR, FontStyle.NORMAL);
    face(builder, "source-serif-4-400-italic", "Handbook", REGULAR, FontStyle.ITALIC);
    face(builder, "source-serif-4-700-normal", "Handbook", BOLD, FontStyle.NORMAL);
    return builder;
  }

  private static void face(
      PdfRendererBuilder builder, String file, String family, int weight, FontStyle style) {
    builder.useFont(() -> open(file + ".ttf"), family, weight, style, true);
  }

  private static String markup(SheetPage page) {
    StringOutput markup = new StringOutput();
    TemplateEngine.createPrecompiled(
            null, ContentType.Html, SheetPdf.class.getClassLoader(), "org.wetside.web.templates")
        .render(TEMPLATE, page, markup);
    return markup.toString().replaceAll(NO_CHARACTERS, "");
  }

  private static String text(String name) throws IOException {
    try (InputStream bytes = open(name)) {
      return new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static InputStream open(String name) {
    return Objects.requireNonNull(SheetPdf.class.getResourceAsStream(name), name);
  }
}
