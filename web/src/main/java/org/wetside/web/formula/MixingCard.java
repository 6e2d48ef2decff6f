package org.wetside.web.formula;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.web.paper.PaperPdf;
import org.wetside.web.paper.SheetWish;

/**
 * Model of the card that lies beside the balance: every step with its amount, a box to tick and
 * room for what was really weighed.
 *
 * @param view the formula weighed out
 * @param lines its steps in words
 * @param made the volume, in the reader's units
 * @param paper {@code a4} or {@code letter}
 * @param style the style sheet
 */
public record MixingCard(
    FormulaView view, List<StepLine> lines, String made, String paper, String style) {
  /** Keeps an unmodifiable copy. */
  public MixingCard {
    lines = List.copyOf(lines);
  }

  /**
   * The card as a PDF.
   *
   * @param paper {@code a4} or {@code letter}; A4 when nothing is said
   */
  public static byte[] pdf(FormulaView view, Units units, @Nullable String paper) {
    Double made = view.madeMl();
    return PaperPdf.of(
        "paper/mixing-card.jte",
        new MixingCard(
            view,
            StepLine.of(view, units),
            made == null ? "" : units.words(Volume.ofMillilitres(made)),
            new SheetWish(null, paper).format().word(),
            PaperPdf.style("mixing-card.css")));
  }
}
