package org.wetside.web.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
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

/**
 * Any paper: a template and its model in, a PDF in the faces of the program out. Codes and hatches
 * are drawn where the template has an object for them ({@link PaperDrawings}).
 */
public final class PaperPdf {
  private static final int REGULAR = 400;
  private static final int BOLD = 700;

  /** What XML 1.0 has no place for. */
  private static final String NO_CHARACTERS = "[^\\x09\\x0A\\x0D\\x20-\\uD7FF\\uE000-\\uFFFD]";

  private PaperPdf() {}

  /**
   * The bytes of the file.
   *
   * @param template file under {@code src/main/jte}, for example {@code "paper/mixing-card.jte"}
   * @param model the template's only parameter
   */
  public static byte[] of(String template, Object model) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      DefaultObjectDrawerFactory drawers = new DefaultObjectDrawerFactory();
      drawers.registerDrawer(PaperDrawings.TYPE, new PaperDrawings());
      builder(template, model).useObjectDrawerFactory(drawers).toStream(bytes).run();
    } catch (IOException broken) {
      throw new UncheckedIOException("the paper cannot be written", broken);
    }
    return bytes.toByteArray();
  }

  /** A style sheet beside this class, for example {@code mixing-card.css}. */
  public static String style(String name) {
    try (InputStream bytes = open(name)) {
      return new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException(name + " cannot be read", broken);
    }
  }

  /** A builder over the drawn template; the caller says where the bytes go. */
  static PdfRendererBuilder builder(String template, Object model) {
    XRLog.setLoggingEnabled(false);
    PdfRendererBuilder builder =
        new PdfRendererBuilder()
            .useFastMode()
            .withHtmlContent(markup(template, model), null)
            .useUriResolver((base, uri) -> null)
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

  private static String markup(String template, Object model) {
    StringOutput markup = new StringOutput();
    TemplateEngine.createPrecompiled(
            null, ContentType.Html, PaperPdf.class.getClassLoader(), "org.wetside.web.templates")
        .render(template, model, markup);
    return markup.toString().replaceAll(NO_CHARACTERS, "");
  }

  private static InputStream open(String name) {
    return Objects.requireNonNull(PaperPdf.class.getResourceAsStream(name), name);
  }
}
