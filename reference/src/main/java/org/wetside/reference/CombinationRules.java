package org.wetside.reference;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import org.wetside.core.safety.CombinationRule;
import org.wetside.core.safety.Combinations;
import org.wetside.core.safety.Nature;

/** The rules on file about what must not, or should not, meet. */
public final class CombinationRules {
  private CombinationRules() {}

  /** Reads the file. */
  public static Combinations open() {
    return new Combinations(
        ReferenceTable.open("baths/combinations").rows().stream()
            .map(CombinationRules::rule)
            .toList());
  }

  private static CombinationRule rule(ReferenceRow row) {
    return new CombinationRule(
        row.text("name"),
        CombinationRule.Severity.valueOf(row.text("severity").toUpperCase(Locale.ROOT)),
        CombinationRule.Meeting.fromWord(row.text("meeting")),
        natures(row, "first"),
        natures(row, "second"),
        natures(row, "unless"),
        row.text("hazard"),
        row.text("advice"),
        row.text("rinse").equals("yes"),
        row.citation(),
        row.standing());
  }

  /** The natures in a cell, parted by |. */
  static Set<Nature> natures(ReferenceRow row, String column) {
    Set<Nature> natures = EnumSet.noneOf(Nature.class);
    for (String word : row.text(column).split("\\|", -1)) {
      if (!word.isEmpty()) {
        natures.add(Nature.fromWord(word));
      }
    }
    return natures;
  }
}
