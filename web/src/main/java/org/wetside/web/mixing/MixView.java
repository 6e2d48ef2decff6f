package org.wetside.web.mixing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.mixing.Mix;
import org.wetside.core.quantity.Units;

/**
 * What to measure out.
 *
 * @param dilution as understood
 * @param totalMl working solution
 * @param concentrateMl from the bottle
 * @param waterMl water to add
 * @param stock whether the stock is enough; null when no film was given
 * @param cautions for handling; never empty
 */
public record MixView(
    String dilution,
    double totalMl,
    double concentrateMl,
    double waterMl,
    @Nullable StockView stock,
    List<CautionView> cautions) {

  /** The view of an answer, its sentences in those units. */
  public static MixView of(Mix.Answer answer, Units units) {
    return new MixView(
        answer.solution().dilution().label(),
        answer.solution().total().millilitres(),
        answer.solution().concentrate().millilitres(),
        answer.solution().water().millilitres(),
        answer.stock().map(check -> StockView.of(check, units)).orElse(null),
        answer.cautions().stream().map(CautionView::of).toList());
  }
}
