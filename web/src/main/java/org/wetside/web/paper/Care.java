package org.wetside.web.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.wetside.app.care.BathCare;
import org.wetside.core.run.RunPlan;
import org.wetside.reference.Caution;

/** The cautions of a run's baths, each said once, with the baths it is for. */
final class Care {
  private final Map<Caution, Set<String>> baths = new LinkedHashMap<>();

  /** Of each bath what has no caution on file, so that no substance is laid to another bath. */
  private final Map<String, Set<String>> unknown = new LinkedHashMap<>();

  private Care() {}

  static List<SheetView.SheetCare> of(RunPlan plan, List<BathCare> baths) {
    Care care = new Care();
    baths.forEach(bath -> care.add(plan.step(bath.step()).kind().word(), bath.cautions()));
    List<SheetView.SheetCare> lines = new ArrayList<>();
    care.baths.forEach((caution, words) -> lines.add(view(words, caution, caution.line())));
    lines.addAll(care.none());
    return lines;
  }

  /** A line for each bath that names something; those that name nothing share one. */
  private List<SheetView.SheetCare> none() {
    List<SheetView.SheetCare> lines = new ArrayList<>();
    Set<String> nameless = new LinkedHashSet<>();
    unknown.forEach(
        (word, names) -> {
          if (names.equals(Set.of(word))) {
            nameless.add(word);
          } else {
            lines.add(none(Set.of(word), String.join(", ", names)));
          }
        });
    if (!nameless.isEmpty()) {
      lines.add(none(nameless, ""));
    }
    return lines;
  }

  private static SheetView.SheetCare none(Set<String> words, String about) {
    Caution none = Caution.noneFor(about);
    return view(words, none, none.line());
  }

  private static SheetView.SheetCare view(Set<String> words, Caution caution, String text) {
    return new SheetView.SheetCare(
        List.copyOf(words), text, caution.citation().toString(), caution.standing().word());
  }

  private void add(String word, List<Caution> cautions) {
    for (Caution one : cautions) {
      if (!one.isNone()) {
        baths.computeIfAbsent(one, unused -> new LinkedHashSet<>()).add(word);
      } else {
        unknown.computeIfAbsent(word, unused -> new LinkedHashSet<>()).add(one.about());
      }
    }
  }
}
