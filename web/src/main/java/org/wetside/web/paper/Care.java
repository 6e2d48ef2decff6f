package org.wetside.web.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.core.bath.BathKind;
import org.wetside.core.process.Step;
import org.wetside.core.shelf.Bottle;
import org.wetside.reference.Caution;
import org.wetside.reference.Cautions;

/** The cautions of a run's baths, each said once, with the baths it is for. */
final class Care {
  private final Cautions cautions = Cautions.open();
  private final Map<Caution, Set<String>> baths = new LinkedHashMap<>();

  /** Of each bath what has no caution on file, so that no substance is laid to another bath. */
  private final Map<String, Set<String>> unknown = new LinkedHashMap<>();

  private Care() {}

  static List<SheetView.SheetCare> of(BenchSnapshot run, List<Bottle> shelf) {
    Care care = new Care();
    for (Step step : run.state().plan().steps()) {
      step.kind().bath().ifPresent(bath -> care.add(step, bath, contents(run, step, shelf)));
    }
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

  private void add(Step step, BathKind bath, String contents) {
    String word = step.kind().word();
    for (Caution one : cautions.whenHandling(contents, bath)) {
      if (!one.hazard().equals(Caution.none().hazard())) {
        baths.computeIfAbsent(one, unused -> new LinkedHashSet<>()).add(word);
      } else {
        unknown.computeIfAbsent(word, unused -> new LinkedHashSet<>()).add(one.about());
      }
    }
  }

  /** What is in the bottle as it stands on the shelf; else as far as the run itself says. */
  private static String contents(BenchSnapshot run, Step step, List<Bottle> shelf) {
    return step.bottle()
        .flatMap(
            letter -> shelf.stream().filter(one -> one.label().letter().equals(letter)).findFirst())
        .map(bottle -> bottle.label().contents())
        .orElse(step.kind().developing() ? run.card().developer() : step.kind().word());
  }
}
