package org.wetside.web.paper;

import java.util.List;
import org.wetside.core.quantity.Units;

/**
 * Bottle labels as a PDF: on sheets of eight to cut apart, or one on a page of its own size for a
 * printer of labels.
 */
public final class LabelPdf {
  private static final String TEMPLATE = "paper/labels.jte";

  private LabelPdf() {}

  /** Sheets of eight. */
  public static byte[] sheet(LabelsView labels, Units units, SheetWish.Paper paper) {
    boolean letter = paper == SheetWish.Paper.LETTER;
    return of(
        labels, units, letter ? "8.5in 11in" : "210mm 297mm", letter ? "12mm 15mm" : "20mm 12mm");
  }

  /** Each on a page of its own, 97 by 68 mm. */
  public static byte[] single(LabelsView labels, Units units) {
    return of(labels, units, "97mm 68mm", "2mm");
  }

  private static byte[] of(LabelsView labels, Units units, String size, String margin) {
    List<LabelFace> faces =
        labels.labels().stream().map(label -> LabelFace.of(label, units)).toList();
    return PaperPdf.of(TEMPLATE, new LabelSheet(faces, size, margin, PaperPdf.style("labels.css")));
  }
}
