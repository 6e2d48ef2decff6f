package org.wetside.app.care;

import java.util.List;
import org.wetside.core.bath.BathKind;
import org.wetside.core.safety.Material;
import org.wetside.core.shelf.BottleRole;
import org.wetside.reference.Caution;
import org.wetside.reference.Cautions;
import org.wetside.reference.Materials;

/**
 * A bath as it is poured on the film.
 *
 * @param kind what it does to film
 * @param name how an objection calls it, for example {@code fixer (bottle F, TF-3)}
 * @param contents what is in it, as far as the bottle or the run tells
 * @param ingredients of the batch in the bottle; empty when it was mixed otherwise
 */
record PouredBath(BathKind kind, String name, String contents, List<String> ingredients) {
  PouredBath {
    ingredients = List.copyOf(ingredients);
  }

  /** At least one. */
  List<Caution> cautions(Cautions onFile) {
    return ingredients.isEmpty()
        ? onFile.whenHandling(contents, kind)
        : onFile.whenHandling(ingredients, kind);
  }

  Material material(Materials onFile) {
    return ingredients.isEmpty()
        ? onFile.ofBath(name, contents, kind, BottleRole.WORKING)
        : onFile.ofMixture(name, contents, kind, BottleRole.WORKING, ingredients);
  }
}
