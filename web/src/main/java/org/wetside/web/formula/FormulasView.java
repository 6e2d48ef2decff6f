package org.wetside.web.formula;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.core.chemistry.Formula;

/**
 * The formulas there are.
 *
 * @param formulas those on file first, then your own
 */
public record FormulasView(List<FormulaLineView> formulas) {
  /**
   * One of them.
   *
   * @param formula short name
   * @param name what it is called
   * @param kind what it is for
   * @param offer mix, test kit or history
   * @param reason why it cannot be mixed; null when it can
   * @param own whether you wrote it
   * @param standing how it is known
   * @param source where it is printed
   */
  public record FormulaLineView(
      String formula,
      String name,
      String kind,
      String offer,
      @Nullable String reason,
      boolean own,
      String standing,
      String source) {
    static FormulaLineView of(Formula one) {
      return new FormulaLineView(
          one.code(),
          one.name(),
          one.kind(),
          one.offer().word(),
          one.refusal().orElse(null),
          one.own(),
          one.standing().word(),
          one.citation().toString());
    }
  }

  /** The view of a list. */
  public static FormulasView of(List<Formula> all) {
    return new FormulasView(all.stream().map(FormulaLineView::of).toList());
  }
}
