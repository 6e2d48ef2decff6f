package org.wetside.web.waste;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.paper.PaperPdf;
import org.wetside.web.paper.SheetWish;

/**
 * Model of what is printed for a jug: the label on it, and the sheet that goes with it.
 *
 * @param jug the jug
 * @param units what volumes are printed in
 * @param printedOn the day
 * @param paper {@code a4} or {@code letter}
 * @param style the style sheet
 */
public record WastePaper(
    JugView jug, Units units, LocalDate printedOn, String paper, String style) {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  /** For that jug; A4 when nothing is said. */
  public static WastePaper of(
      JugView jug, Units units, LocalDate printedOn, @Nullable String paper) {
    return new WastePaper(
        jug,
        units,
        printedOn,
        new SheetWish(null, paper).format().word(),
        PaperPdf.style("waste.css"));
  }

  /** The label as a PDF. */
  public byte[] label() {
    return PaperPdf.of("paper/waste-label.jte", this);
  }

  /** The sheet that goes with the jug as a PDF. */
  public byte[] handInSheet() {
    return PaperPdf.of("paper/waste-sheet.jte", this);
  }

  /** The size of the page. */
  public String size() {
    return paper.equals("letter") ? "8.5in 11in" : "210mm 297mm";
  }

  /** A volume in the reader's units. */
  public String volume(double millilitres) {
    return units.words(Volume.ofMillilitres(millilitres));
  }

  /** The day it was printed. */
  public String day() {
    return DAY.format(printedOn);
  }

  /** Whose rules come first. */
  public String rule() {
    return WasteView.RULE;
  }

  /** What must never meet it. */
  public List<CautionView> neverTogether() {
    return jug.cautions().stream().filter(one -> one.about().startsWith("never together")).toList();
  }
}
