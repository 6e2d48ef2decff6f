package org.wetside.reference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.bath.BathKind;

/** The cautions on file, found by chemical, by formula or by kind of bath. */
public final class Cautions {
  private static final String HOT_WATER = "hot water above 50 °C";

  private final List<ReferenceRow> hazards;
  private final ReferenceTable steps;

  private Cautions(List<ReferenceRow> hazards, ReferenceTable steps) {
    this.hazards = hazards;
    this.steps = steps;
  }

  /** Reads the files. */
  public static Cautions open() {
    return new Cautions(
        ReferenceTable.open("baths/hazards").rows(), ReferenceTable.open("baths/formula_steps"));
  }

  /**
   * Everything on file about a substance, or about each ingredient of a formula of that name; what
   * has no row says so.
   *
   * @return at least one caution
   */
  public List<Caution> of(String substance) {
    Optional<Caution> chemical = ofChemical(substance);
    if (chemical.isPresent()) {
      return List.of(chemical.get());
    }
    Map<String, Caution> found = new LinkedHashMap<>();
    for (ReferenceRow step : steps.rows()) {
      String ingredient = step.text("ingredient");
      if (step.text("formula").equalsIgnoreCase(substance.strip()) && !isWater(ingredient)) {
        Caution caution = ofChemical(ingredient).orElseGet(() -> Caution.noneFor(ingredient));
        found.putIfAbsent(caution.about(), caution);
      }
    }
    return found.isEmpty()
        ? List.of(Caution.noneFor(substance.strip()))
        : List.copyOf(found.values());
  }

  /**
   * What is shown when a bottle is handled: what is on file about its contents, then what must
   * never meet a bath of that kind.
   *
   * @return at least one caution
   */
  public List<Caution> whenHandling(String contents, BathKind kind) {
    List<Caution> all = new ArrayList<>(of(contents));
    for (ReferenceRow row : hazards) {
      if (row.text("kind").equals("mixture") && row.isFor(kind)) {
        all.add(Caution.of(row));
      }
    }
    return List.copyOf(all);
  }

  /** Scalding: for pouring water above 50 °C. */
  public Caution ofHotWater() {
    return hazards.stream()
        .filter(row -> row.text("substance").equals(HOT_WATER))
        .map(Caution::of)
        .findFirst()
        .orElseThrow();
  }

  /** The row one of whose names stands in the text; the longest such name wins. */
  private Optional<Caution> ofChemical(String text) {
    String said = text.toLowerCase(Locale.ROOT);
    ReferenceRow best = null;
    int longest = 0;
    for (ReferenceRow row : hazards) {
      for (String word : row.text("words").split("\\|", -1)) {
        if (!word.isEmpty() && word.length() > longest && said.contains(word)) {
          best = row;
          longest = word.length();
        }
      }
    }
    return Optional.ofNullable(best).map(Caution::of);
  }

  private static boolean isWater(String ingredient) {
    return ingredient.toLowerCase(Locale.ROOT).contains("water");
  }
}
