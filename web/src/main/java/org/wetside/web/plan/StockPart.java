package org.wetside.web.plan;

import org.wetside.app.plan.PlanWords;
import org.wetside.core.bath.StockRequirement;
import org.wetside.core.quantity.Units;

/**
 * Whether a fill holds enough developer, as a page says it.
 *
 * @param flag the word before it; empty when there is enough
 * @param wrong whether it is known to be too little, and not only unknown
 * @param text the check in one sentence
 */
public record StockPart(String flag, boolean wrong, String text) {
  static StockPart of(StockRequirement check, Units units) {
    boolean wrong = check instanceof StockRequirement.TooLittle;
    String flag = check.passed() ? "" : wrong ? "Too little developer" : "Minimum unknown";
    return new StockPart(flag, wrong, PlanWords.of(check, units));
  }
}
