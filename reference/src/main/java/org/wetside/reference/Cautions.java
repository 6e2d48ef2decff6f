package org.wetside.reference;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.wetside.core.bath.BathKind;

/** The cautions on file, found by chemical, by formula or by kind of bath. */
public final class Cautions {
  private static final String HOT_WATER = "hot water above 50 °C";

  private final List<ReferenceRow> hazards;
  private final ChemicalRows chemicals;
  private final ChemicalRows mixtures;
  private final NamedIngredients formulas = new NamedIngredients();

  private Cautions(List<ReferenceRow> hazards) {
    this.hazards = hazards;
    chemicals = new ChemicalRows(ofKind(hazards, "chemical"));
    mixtures = new ChemicalRows(ofKind(hazards, "mixture"));
  }

  /** Reads the files. */
  public static Cautions open() {
    return new Cautions(ReferenceTable.open("baths/hazards").rows());
  }

  /**
   * Everything on file about a substance, or about each ingredient of a formula that the text
   * names; what has no row says so.
   *
   * @return at least one caution
   */
  public List<Caution> of(String substance) {
    List<String> ingredients = formulas.in(substance);
    return of(ingredients.isEmpty() ? List.of(substance.strip()) : ingredients);
  }

  /**
   * Everything on file about each of these; what has no row says so. Plain water needs none.
   *
   * @return at least one caution
   */
  public List<Caution> of(List<String> ingredients) {
    Set<Caution> found = new LinkedHashSet<>();
    for (String ingredient : ingredients) {
      if (!isWater(ingredient)) {
        found.addAll(ofOne(ingredient));
      }
    }
    return found.isEmpty()
        ? List.of(Caution.noneFor(String.join(", ", ingredients)))
        : List.copyOf(found);
  }

  /**
   * What is shown when a bottle is handled: what is on file about its contents, then what must
   * never meet a bath of that kind.
   *
   * @return at least one caution
   */
  public List<Caution> whenHandling(String contents, BathKind kind) {
    return withMixtures(of(contents), kind);
  }

  /** The same for a bath whose ingredients are known. */
  public List<Caution> whenHandling(List<String> ingredients, BathKind kind) {
    return withMixtures(of(ingredients), kind);
  }

  /** Scalding: for pouring water above 50 °C. */
  public Caution ofHotWater() {
    return hazards.stream()
        .filter(row -> row.text("substance").equals(HOT_WATER))
        .map(Caution::of)
        .findFirst()
        .orElseThrow();
  }

  /** For weighing, dissolving and pouring concentrates: the air, the eyes and the hands. */
  public List<Caution> ofMixing() {
    return hazards.stream()
        .filter(row -> row.text("kind").equals("practice") && row.text("baths").equals("*"))
        .map(Caution::of)
        .toList();
  }

  private List<Caution> ofOne(String name) {
    List<Caution> found = new ArrayList<>();
    chemicals.in(name).forEach(row -> found.add(Caution.of(row)));
    if (found.isEmpty()) {
      found.add(Caution.noneFor(name));
    }
    mixtures.in(name).forEach(row -> found.add(Caution.of(row)));
    return found;
  }

  /** What must never meet a bath of that kind; may be empty. */
  public List<Caution> ofMixturesWith(BathKind kind) {
    return withMixtures(List.of(), kind);
  }

  private List<Caution> withMixtures(List<Caution> first, BathKind kind) {
    Set<Caution> all = new LinkedHashSet<>(first);
    for (ReferenceRow row : hazards) {
      if (row.text("kind").equals("mixture") && row.isFor(kind)) {
        all.add(Caution.of(row));
      }
    }
    return List.copyOf(all);
  }

  private static List<ReferenceRow> ofKind(List<ReferenceRow> rows, String kind) {
    return rows.stream().filter(row -> row.text("kind").equals(kind)).toList();
  }

  /** Water as formulas write it: {@code water 52 C}, {@code cold water to make}. */
  static boolean isWater(String ingredient) {
    return ingredient
        .strip()
        .toLowerCase(Locale.ROOT)
        .matches("((cold|hot|warm|distilled|pure|tap|plain)\\s+)*water(\\s+(\\d|to\\b|at\\b).*)?");
  }
}
