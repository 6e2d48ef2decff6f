package org.wetside.web.paper;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** A PDF read back as a printer would draw it and a phone would see it. */
record Printed(
    int pages, String text, List<PDFont> fonts, BufferedImage firstPage, double widthMm) {
  private static final int DPI = 150;
  private static final double MM_PER_POINT = 25.4 / 72;

  static Printed of(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<PDFont> fonts = new ArrayList<>();
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          fonts.add(page.getResources().getFont(name));
        }
      }
      return new Printed(
          document.getNumberOfPages(),
          new PDFTextStripper().getText(document).replaceAll("\\s+", " "),
          fonts,
          new PDFRenderer(document).renderImageWithDPI(0, DPI, ImageType.RGB),
          document.getPage(0).getMediaBox().getWidth() * MM_PER_POINT);
    }
  }

  String code() throws ReaderException {
    return code(firstPage);
  }

  /** The code in that part of the first page. */
  String code(double leftMm, double topMm, double wideMm, double tallMm) throws ReaderException {
    BufferedImage part =
        firstPage.getSubimage(dots(leftMm), dots(topMm), dots(wideMm), dots(tallMm));
    return code(part);
  }

  private static int dots(double millimetres) {
    return (int) Math.round(millimetres * DPI / 25.4);
  }

  /** As a phone does: first the whole, then nearer, since lines of the page can look like it. */
  private static String code(BufferedImage image) throws ReaderException {
    int wide = image.getWidth();
    int tall = image.getHeight();
    List<BufferedImage> views =
        List.of(
            image,
            image.getSubimage(wide / 2, 0, wide - wide / 2, tall / 2),
            image.getSubimage(0, 0, wide / 2, tall / 2),
            image.getSubimage(wide / 2, tall / 2, wide - wide / 2, tall - tall / 2),
            image.getSubimage(0, tall / 2, wide / 2, tall - tall / 2));
    ReaderException unread = NotFoundException.getNotFoundInstance();
    for (BufferedImage view : views) {
      try {
        return read(view);
      } catch (ReaderException nothing) {
        unread = nothing;
      }
    }
    throw unread;
  }

  private static String read(BufferedImage image) throws ReaderException {
    int wide = image.getWidth();
    int tall = image.getHeight();
    int[] pixels = image.getRGB(0, 0, wide, tall, null, 0, wide);
    return new QRCodeReader()
        .decode(
            new BinaryBitmap(
                new GlobalHistogramBinarizer(new RGBLuminanceSource(wide, tall, pixels))),
            Map.of(DecodeHintType.TRY_HARDER, true))
        .getText();
  }

  /** The furthest any dot of the first page is from a grey. */
  int colour() {
    int most = 0;
    for (int pixel : pixels()) {
      int red = pixel >> 16 & 255;
      int green = pixel >> 8 & 255;
      int blue = pixel & 255;
      most =
          Math.max(
              most, Math.max(red, Math.max(green, blue)) - Math.min(red, Math.min(green, blue)));
    }
    return most;
  }

  /** The lowest millimetre with ink on it. */
  double lowestInkMm() {
    for (int y = firstPage.getHeight() - 1; y >= 0; y--) {
      for (int x = 0; x < firstPage.getWidth(); x++) {
        if ((firstPage.getRGB(x, y) & 255) < 128) {
          return y * 25.4 / DPI;
        }
      }
    }
    return 0;
  }

  /** How long the level lines of a page are that are longer than 100 mm; the first page is 0. */
  static List<Double> linesMm(byte[] pdf, int page) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      BufferedImage drawn = new PDFRenderer(document).renderImageWithDPI(page, DPI, ImageType.RGB);
      List<Double> lines = new ArrayList<>();
      for (int y = 0; y < drawn.getHeight(); y++) {
        int run = 0;
        for (int x = 0; x < drawn.getWidth(); x++) {
          boolean ink = (drawn.getRGB(x, y) & 255) < 128;
          if (!ink && run > dots(100)) {
            lines.add(run * 25.4 / DPI);
          }
          run = ink ? run + 1 : 0;
        }
      }
      return lines;
    }
  }

  private int[] pixels() {
    int width = firstPage.getWidth();
    return firstPage.getRGB(0, 0, width, firstPage.getHeight(), null, 0, width);
  }
}
