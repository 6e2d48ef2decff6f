package org.wetside.reference;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.wetside.core.bath.BathKind;
import org.wetside.core.safety.Material;
import org.wetside.core.safety.Nature;
import org.wetside.core.shelf.BottleRole;

/** What a thing is, as far as its name, its formula and its kind of bath tell. */
public final class Materials {
  private final List<ReferenceRow> rows;
  private final NamedIngredients formulas = new NamedIngredients();

  private Materials(List<ReferenceRow> rows) {
    this.rows = rows;
  }

  /** Reads the file. */
  public static Materials open() {
    return new Materials(ReferenceTable.open("baths/natures").rows());
  }

  /** Plain water: tap water, a rinse, a wash. */
  public static Material water() {
    return Material.of("water", Set.of(Nature.WATER));
  }

  /** A salt, an acid, a solution bought as such, as a formula names it. */
  public Material ofIngredient(String name) {
    Set<Nature> natures = EnumSet.noneOf(Nature.class);
    return read(name, natures) ? Material.of(name, natures) : Material.unknown(name);
  }

  /**
   * A bath: by the ingredients of the formula that its name tells, by other words of its name, and
   * by its kind.
   *
   * @param name as the objection shall call it, for example {@code bottle F, TF-3 working}
   * @param contents what stands on the bottle
   */
  public Material ofBath(String name, String contents, BathKind kind, BottleRole strength) {
    return ofMixture(name, contents, kind, strength, formulas.in(contents));
  }

  /** A bath of known ingredients, as {@link #ofBath} besides. */
  public Material ofMixture(
      String name, String contents, BathKind kind, BottleRole strength, List<String> ingredients) {
    Set<Nature> natures = EnumSet.noneOf(Nature.class);
    boolean known = read(contents, natures);
    boolean water = natures.equals(EnumSet.of(Nature.WATER));
    for (String ingredient : ingredients) {
      known |= read(ingredient, natures);
    }
    for (ReferenceRow row : rows) {
      if (!row.text("baths").isEmpty() && row.isFor(kind)) {
        known = true;
        if (!water) {
          natures.addAll(CombinationRules.natures(row, "natures"));
        }
      }
    }
    if (strength != BottleRole.CONCENTRATE) {
      natures.remove(Nature.CONCENTRATED_ACID);
      natures.add(Nature.WATER);
    }
    return known ? Material.of(name, natures) : Material.unknown(name);
  }

  /** Adds what the words of a name tell; false when they tell nothing. */
  private boolean read(String text, Set<Nature> natures) {
    boolean known = false;
    OptionalDouble percent = WholeWords.percent(text);
    for (ReferenceRow row : rows) {
      if (speaksOf(row, text) && strongEnough(row, percent)) {
        known = true;
        natures.addAll(CombinationRules.natures(row, "natures"));
      }
    }
    return known;
  }

  private static boolean speaksOf(ReferenceRow row, String text) {
    for (String word : row.text("words").split("\\|", -1)) {
      if (!word.isEmpty() && WholeWords.word(word).matcher(text).find()) {
        return true;
      }
    }
    return false;
  }

  private static boolean strongEnough(ReferenceRow row, OptionalDouble percent) {
    OptionalDouble from = row.maybeNumber("from_percent");
    return from.isEmpty() || percent.isEmpty() || percent.getAsDouble() >= from.getAsDouble();
  }
}
