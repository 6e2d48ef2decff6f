package org.wetside.web.mixing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.mixing.Mix;
import org.wetside.core.quantity.Units;
import org.wetside.core.safety.Objection;

/**
 * What to measure out.
 *
 * @param dilution as understood
 * @param totalMl working solution
 * @param concentrateMl from the bottle
 * @param waterMl water to add
 * @param stock whether the stock is enough; null when no film was given
 * @param warnings what speaks against taking so much of it; empty for most
 * @param cautions for handling; never empty
 */
public record MixView(
    String dilution,
    double totalMl,
    double concentrateMl,
    double waterMl,
    @Nullable StockView stock,
    List<WarningView> warnings,
    List<CautionView> cautions) {

  /**
   * What should not be done, though it can be.
   *
   * @param text what, why, and what to do instead
   * @param source what it is cited from
   * @param standing how it is known
   */
  public record WarningView(String text, String source, String standing) {
    static WarningView of(Objection objection) {
      return new WarningView(
          objection.things() + ": " + objection.rule().hazard() + "; " + objection.rule().advice(),
          objection.rule().citation().toString(),
          objection.rule().standing().word());
    }
  }

  /** The view of an answer, its sentences in those units. */
  public static MixView of(Mix.Answer answer, Units units) {
    return new MixView(
        answer.solution().dilution().label(),
        answer.solution().total().millilitres(),
        answer.solution().concentrate().millilitres(),
        answer.solution().water().millilitres(),
        answer.stock().map(check -> StockView.of(check, units)).orElse(null),
        answer.warnings().stream().map(WarningView::of).toList(),
        answer.cautions().stream().map(CautionView::of).toList());
  }
}
