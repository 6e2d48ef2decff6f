package org.wetside.app.care;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.core.bath.BathKind;
import org.wetside.core.chemistry.Batch;
import org.wetside.core.process.Step;
import org.wetside.core.safety.Material;
import org.wetside.core.safety.Objection;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.reference.CombinationRules;
import org.wetside.reference.Materials;
import org.wetside.store.Batches;
import org.wetside.store.Bottles;
import org.wetside.store.Session;

/**
 * The baths of steps in their order. What a bath is comes from the bottle that stands on the shelf
 * under its letter and does to film what the step wants; without one only its kind is known.
 *
 * @param each for each step its bath; empty for plain water and for light
 */
record PouredBaths(List<Step> steps, List<Optional<PouredBath>> each) {
  static PouredBaths of(Session session, List<Step> steps, String developer) {
    List<Bottle> shelf = new Bottles(session).onShelf();
    List<Optional<PouredBath>> baths = new ArrayList<>();
    for (Step step : steps) {
      baths.add(step.kind().bath().map(kind -> bath(session, step, kind, shelf, developer)));
    }
    return new PouredBaths(steps, baths);
  }

  private static PouredBath bath(
      Session session, Step step, BathKind kind, List<Bottle> shelf, String developer) {
    String word = step.kind().word();
    Optional<BottleLabel> label =
        step.bottle()
            .flatMap(
                letter ->
                    shelf.stream()
                        .map(Bottle::label)
                        .filter(one -> one.letter().equalsIgnoreCase(letter.strip()))
                        .filter(one -> one.bath() == kind)
                        .findFirst());
    if (label.isPresent()) {
      String contents = label.get().contents();
      return new PouredBath(
          kind,
          word + " (bottle " + label.get().letter() + ", " + contents + ")",
          contents,
          ingredients(session, label.get().letter()));
    }
    boolean told = step.kind().developing() && !developer.isEmpty();
    return new PouredBath(
        kind, told ? word + " (" + developer + ")" : word, told ? developer : word, List.of());
  }

  private static List<String> ingredients(Session session, String letter) {
    return new Batches(session)
        .inBottle(letter)
        .map(batch -> batch.steps().stream().map(Batch.Step::ingredient).toList())
        .orElse(List.of());
  }

  /** What speaks against their order; the position of each is the index of the second step. */
  List<Objection> objections() {
    Materials onFile = Materials.open();
    List<Integer> wet = new ArrayList<>();
    List<Material> poured = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).kind().wet()) {
        wet.add(i);
        poured.add(each.get(i).map(bath -> bath.material(onFile)).orElseGet(Materials::water));
      }
    }
    return CombinationRules.open().inTurn(poured).stream()
        .map(one -> new Objection(one.first(), one.second(), wet.get(one.position()), one.rule()))
        .toList();
  }
}
