package org.wetside.web.formula;

import org.jspecify.annotations.Nullable;
import org.wetside.core.chemistry.OwnFormula;

/**
 * A formula of one's own.
 *
 * @param formula short name
 * @param name what it is called; the short name when not said
 * @param kind what it is for, such as {@code fixer}
 * @param source where it is printed; from memory when not said
 * @param note anything else
 * @param lines one step to a line, in order of dissolving: {@code 2 g metol}, at the end {@code 1 L
 *     water to make}
 */
public record FormulaBody(
    @Nullable String formula,
    @Nullable String name,
    @Nullable String kind,
    @Nullable String source,
    @Nullable String note,
    @Nullable String lines) {
  /**
   * In the types of the trade.
   *
   * @throws org.wetside.core.quantity.BadValueException when something is not understood
   */
  public OwnFormula toOwn() {
    return new OwnFormula(
        said(formula),
        said(name),
        said(kind),
        said(source),
        said(note),
        OwnFormula.lines(said(lines)));
  }

  private static String said(@Nullable String text) {
    return text == null ? "" : text;
  }
}
