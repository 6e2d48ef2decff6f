package org.wetside.reference;

import org.wetside.core.waste.SilverContent;

/** What is on file about used fixer. */
public final class UsedFixer {
  private UsedFixer() {}

  /** How much silver it is said to hold: a range of low confidence. */
  public static SilverContent silver() {
    ReferenceRow row =
        ReferenceTable.open("baths/capacity").rows().stream()
            .filter(one -> one.text("bath").equals("used fixer"))
            .filter(one -> one.text("what").equals("silver"))
            .findFirst()
            .orElseThrow();
    return new SilverContent(
        row.number("least"),
        row.number("most"),
        row.citation(),
        row.standing(),
        "low confidence: fixer that fixed little film holds less");
  }
}
