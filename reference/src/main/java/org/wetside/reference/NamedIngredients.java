package org.wetside.reference;

import java.util.ArrayList;
import java.util.List;

/** What is in the formulas on file, by a name that stands anywhere in what somebody wrote. */
final class NamedIngredients {
  private final List<ReferenceRow> steps = ReferenceTable.open("baths/formula_steps").rows();

  /** The ingredients of the formula whose name stands in the text; empty when none does. */
  List<String> in(String text) {
    List<String> found = new ArrayList<>();
    String formula = "";
    for (ReferenceRow step : steps) {
      String name = step.text("formula");
      if (formula.isEmpty() && WholeWords.name(name).matcher(text).find()) {
        formula = name;
      }
      if (name.equals(formula)) {
        found.add(step.text("ingredient"));
      }
    }
    return found;
  }
}
