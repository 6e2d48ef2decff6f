package org.wetside.web.mixing;

import java.util.List;
import org.wetside.reference.Caution;
import org.wetside.reference.Cautions;

/**
 * A caution for the moment of handling.
 *
 * @param about chemical, mixture or practice; empty when it is not known what is handled
 * @param text hazard and advice in one line
 * @param source what it is cited from
 * @param standing how it is known
 */
public record CautionView(String about, String text, String source, String standing) {
  /** The view of a caution. */
  public static CautionView of(Caution caution) {
    return new CautionView(
        caution.about(), caution.line(), caution.citation().toString(), caution.standing().word());
  }

  /** What holds while anything is weighed, dissolved or poured. */
  public static List<CautionView> ofMixing() {
    return Cautions.open().ofMixing().stream().map(CautionView::of).toList();
  }
}
