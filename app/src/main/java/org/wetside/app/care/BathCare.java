package org.wetside.app.care;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.wetside.core.safety.Objection;
import org.wetside.reference.Caution;

/**
 * What is said of the bath of a step when it is handled.
 *
 * @param step index of the step
 * @param bath how it is called, for example {@code fixer (bottle F, TF-3)}
 * @param cautions on file, what must never meet it last; at least one
 * @param against what speaks against pouring it straight after the bath before; empty for most
 */
public record BathCare(int step, String bath, List<Caution> cautions, List<Objection> against) {
  public BathCare {
    cautions = List.copyOf(cautions);
    against = List.copyOf(against);
  }

  /** Whether there is a caution on file for everything in it. */
  public boolean isOnFile() {
    return cautions.stream().noneMatch(Caution::isNone);
  }

  /**
   * What hands, eyes and air need, each thing once, for a glance at the moment of pouring; that
   * nothing is on file for some of it comes first, by name where more is known than the kind of
   * bath. What must never meet it is left to the whole list.
   */
  public String inShort() {
    List<String> all = new ArrayList<>();
    if (!isOnFile()) {
      all.add(Caution.noneFor(String.join(", ", missing())).line());
    }
    Set<String> words = new LinkedHashSet<>();
    for (Caution caution : cautions) {
      if (!caution.isNone() && !caution.isOfMixture()) {
        String said = caution.advice().isEmpty() ? caution.hazard() : caution.advice();
        for (String part : said.split("[,;]", -1)) {
          words.add(part.strip());
        }
      }
    }
    if (!words.isEmpty()) {
      all.add(String.join(", ", words));
    }
    return String.join("; ", all);
  }

  private List<String> missing() {
    return cautions.stream()
        .filter(Caution::isNone)
        .map(Caution::about)
        .filter(about -> !about.equals(bath))
        .toList();
  }
}
