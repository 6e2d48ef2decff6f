package org.wetside.web.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.formula.WeighOut;
import org.wetside.core.chemistry.Measure;
import org.wetside.core.chemistry.Measures;
import org.wetside.core.quantity.Volume;
import org.wetside.web.page.BalanceText;

/**
 * What is asked of a formula, as it was typed; null or blank is not said.
 *
 * @param make volume wanted, for example {@code 700mL}
 * @param have what is in the cupboard in place of an ingredient, several parted by {@code ;}
 * @param balance the smallest step the balance shows, for example {@code 0.1g}; the one of the
 *     house when not said
 * @param measures syringes and graduates at hand, capacity and division, parted by {@code ;}, for
 *     example {@code 100mL/1mL; 10mL/0.5mL}; those of the house when not said
 */
public record FormulaQuery(
    @Nullable String make,
    @Nullable String have,
    @Nullable String balance,
    @Nullable String measures) {
  /** Only to look at it. */
  static FormulaQuery nothing() {
    return new FormulaQuery(null, null, null, null);
  }

  /**
   * The question in the types of the trade.
   *
   * @param formula its name
   * @throws BadValueException when something typed is not understood
   */
  public WeighOut.Question question(String formula) {
    List<Measure> atHand = new ArrayList<>();
    parts(measures).forEach(one -> atHand.add(Measure.parse(one)));
    return new WeighOut.Question(
        formula,
        Optional.ofNullable(make).filter(one -> !one.isBlank()).map(Volume::parse),
        parts(have),
        Optional.ofNullable(balance).filter(one -> !one.isBlank()).map(BalanceText::parseWithUnit),
        atHand.isEmpty() ? Optional.empty() : Optional.of(new Measures(atHand)));
  }

  private static List<String> parts(@Nullable String text) {
    List<String> parts = new ArrayList<>();
    if (text != null) {
      for (String part : text.split(";", -1)) {
        if (!part.isBlank()) {
          parts.add(part.strip());
        }
      }
    }
    return parts;
  }
}
