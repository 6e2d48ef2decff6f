package org.wetside.app.waste;

import java.util.List;
import org.wetside.core.safety.Material;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.waste.FilledJug;
import org.wetside.core.waste.Poured;
import org.wetside.reference.Materials;

/** What a pouring is, as far as its words, its formula and its kind of bath tell. */
final class WasteMaterials {
  private final Materials materials = Materials.open();

  /** What in it nothing is on file about, each once. */
  List<String> unknownIn(FilledJug jug) {
    return jug.inside().stream()
        .filter(poured -> !of(poured).known())
        .map(Poured::contents)
        .distinct()
        .toList();
  }

  Material of(Poured poured) {
    if (poured.bath().isEmpty()) {
      return materials.ofIngredient(poured.contents()).named(poured.spoken());
    }
    Material read =
        materials.ofBath(
            poured.spoken(), poured.contents(), poured.bath().get(), BottleRole.WORKING);
    List<String> mixed = poured.ingredients();
    return mixed.isEmpty()
        ? read
        : materials.ofMixture(
            poured.spoken(), poured.contents(), poured.bath().get(), BottleRole.WORKING, mixed);
  }
}
