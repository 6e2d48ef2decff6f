package org.wetside.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.safety.Combinations;
import org.wetside.core.safety.Material;
import org.wetside.core.safety.Nature;
import org.wetside.core.safety.Objection;
import org.wetside.core.shelf.BottleRole;

/** What is refused and what is warned of, by the names people use. */
class CombinationsOnFileTest {
  private final Combinations combinations = CombinationRules.open();
  private final Materials materials = Materials.open();

  /** The sources are those of hazards.csv: CH-S14 p.171, CH-S58, CH-S94, CH-S51, CH-S50. */
  @ParameterizedTest
  @CsvSource({
    "household bleach, acetic acid 28%, hypochlorite and acid, CH-S14",
    "citric acid, sodium hypochlorite, hypochlorite and acid, CH-S14",
    "potassium alum, household bleach, hypochlorite and acid, CH-S14",
    "household bleach, rapid fixer, hypochlorite and ammonia, CH-S58",
    "ammonia solution 3%, household bleach, hypochlorite and ammonia, CH-S58",
    "sodium thiosulfate pentahydrate, household bleach, hypochlorite and fixer, CH-S58",
    "acetic acid 28%, potassium ferricyanide, acid and ferricyanide, CH-S94",
    "potassium ferricyanide, sulfuric acid 5%, acid and ferricyanide, CH-S94",
    "sodium bisulfite, sodium sulfide anhydrous, acid and sulfide, CH-S94",
    "sodium sulfide, citric acid, acid and sulfide, CH-S94",
    "water, sulfuric acid, water into concentrated acid, CH-S51",
    "cold water to make, glacial acetic acid, water into concentrated acid, CH-S51",
    "acetic acid 28%, sodium thiosulfate pentahydrate, acid and thiosulfate without sulfite, CH-S50",
    "potassium alum, ammonium thiosulfate, acid and thiosulfate without sulfite, CH-S50"
  })
  void isRefusedWithBothThingsTheReasonAndTheSource(
      String poured, String inside, String rule, String source) {
    List<Objection> all = pouring(poured, inside);
    assertThat(all).extracting(one -> one.rule().name()).contains(rule);
    assertThatThrownBy(() -> Objection.requireNoneRefused(all))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll(poured, inside, source);
  }

  @ParameterizedTest
  @CsvSource({
    "acetic acid 28%, water",
    "glacial acetic acid, water",
    "water, acetic acid 28%",
    "sodium bisulfite, sodium thiosulfate pentahydrate",
    "sodium carbonate monohydrate, sodium thiosulfate pentahydrate",
    "potassium permanganate, sulfuric acid 5%",
    "sodium sulfite anhydrous, acetic acid 28%",
    "sodium sulfate anhydrous, household bleach",
    "potassium bromide, potassium ferricyanide",
    "hydroquinone, metol"
  })
  void isNotRefused(String poured, String inside) {
    assertThat(pouring(poured, inside)).noneMatch(Objection::isRefused);
  }

  @Test
  void sulfiteBeforeTheAcidMakesAFixerAndAcidBeforeTheSulfiteSpoilsIt() {
    List<String> right =
        List.of(
            "water 52 C",
            "sodium thiosulfate pentahydrate",
            "sodium sulfite anhydrous",
            "acetic acid 28%",
            "cold water to make");
    List<String> wrong = new ArrayList<>(right);
    wrong.set(2, right.get(3));
    wrong.set(3, right.get(2));
    assertThat(inOrder(right)).isEmpty();
    assertThat(inOrder(wrong))
        .singleElement()
        .satisfies(one -> assertThat(one.position()).isEqualTo(2))
        .satisfies(one -> assertThat(one.sentence()).contains("sulfite in before any acid"));
  }

  @Test
  void waterIsRefusedOnConcentratedAcidOnlyBeforeThereIsWater() {
    assertThat(inOrder(List.of("glacial acetic acid", "water"))).hasSize(1);
    assertThat(inOrder(List.of("water", "glacial acetic acid", "water to make"))).isEmpty();
  }

  /** The amounts of this one are lost in part, its sulfite with them; it is history. */
  private static final Set<String> READ_IN_PART = Set.of("CHROME-FIX");

  @Test
  void everyFormulaOnFileMayBeMixedInItsOwnOrder() {
    ReferenceTable.open("baths/formula_steps").rows().stream()
        .collect(
            Collectors.groupingBy(
                row -> row.text("formula"),
                Collectors.mapping(row -> row.text("ingredient"), Collectors.toList())))
        .forEach(
            (formula, ingredients) -> {
              if (!READ_IN_PART.contains(formula)) {
                assertThat(inOrder(ingredients)).as(formula).isEmpty();
              }
            });
  }

  /** CH-S14 p.106 and CH-S07. */
  @ParameterizedTest
  @CsvSource({
    "SB-1, stop bath, TF-3, fixer, acid stop before an alkaline fixer, CH-S14",
    "SB-8, stop bath, TF-2, fixer, acid stop before an alkaline fixer, CH-S14",
    "anything, stop bath, alkaline fixer, fixer, acid stop before an alkaline fixer, CH-S14",
    "D-19, developer, SB-1, stop bath, acid stop after a strongly alkaline developer, CH-S07"
  })
  void isWarnedOfWithARinse(
      String first, String kind, String second, String secondKind, String rule, String source) {
    List<Material> order = List.of(bath(first, kind), bath(second, secondKind));
    assertThat(combinations.inTurn(order))
        .singleElement()
        .satisfies(
            one -> {
              assertThat(one.isRefused()).isFalse();
              assertThat(one.rule().name()).isEqualTo(rule);
              assertThat(one.rule().rinse()).isTrue();
              assertThat(one.sentence()).contains(first, second, source);
            });
    assertThat(combinations.inTurn(List.of(order.get(0), Materials.water(), order.get(1))))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "SB-1, stop bath, F-24, fixer",
    "SB-1, stop bath, F-6, fixer",
    "SB-1, stop bath, rapid fixer, fixer",
    "water, stop bath, TF-3, fixer",
    "D-76, developer, SB-1, stop bath",
    "D-76, developer, TF-3, fixer"
  })
  void isNotWarnedOf(String first, String kind, String second, String secondKind) {
    assertThat(combinations.inTurn(List.of(bath(first, kind), bath(second, secondKind)))).isEmpty();
  }

  /** CH-S60: mix the whole package. */
  @Test
  void partOfAPowderPackageIsWarnedOf() {
    assertThat(combinations.partOf(materials.ofIngredient("powder package of D-76")))
        .singleElement()
        .satisfies(one -> assertThat(one.isRefused()).isFalse())
        .satisfies(one -> assertThat(one.sentence()).contains("not mixed evenly", "CH-S60"));
    assertThat(combinations.partOf(materials.ofIngredient("sodium sulfite"))).isEmpty();
  }

  @Test
  void whatMustNotMeetIsRefusedWhicheverIsPouredAndWhateverElseIsThere() {
    List<Material> harmless =
        List.of(
            Material.of("bromide", Set.of()),
            Material.of("carbonate", Set.of(Nature.ALKALI, Nature.STRONG_ALKALI)),
            Material.of("developer", Set.of(Nature.DEVELOPER)));
    List<List<Nature>> pairs =
        List.of(
            List.of(Nature.HYPOCHLORITE, Nature.ACID),
            List.of(Nature.HYPOCHLORITE, Nature.AMMONIA),
            List.of(Nature.HYPOCHLORITE, Nature.FIXER),
            List.of(Nature.ACID, Nature.FERRICYANIDE),
            List.of(Nature.ACID, Nature.SULFIDE));
    SplittableRandom random = new SplittableRandom(4_0110);
    for (int round = 0; round < 500; round++) {
      List<Nature> pair = pairs.get(random.nextInt(pairs.size()));
      List<Material> order = new ArrayList<>();
      for (int i = random.nextInt(4); i > 0; i--) {
        order.add(harmless.get(random.nextInt(harmless.size())));
      }
      int at = random.nextInt(order.size() + 1);
      order.add(at, Material.of("one", Set.of(pair.get(round % 2))));
      order.add(
          random.nextInt(order.size() + 1), Material.of("other", Set.of(pair.get(1 - round % 2))));
      assertThat(combinations.inOrder(order)).as("%s", order).anyMatch(Objection::isRefused);
    }
  }

  private List<Objection> pouring(String poured, String inside) {
    return combinations.pouring(
        materials.ofIngredient(poured), List.of(materials.ofIngredient(inside)));
  }

  private List<Objection> inOrder(List<String> ingredients) {
    return combinations.inOrder(ingredients.stream().map(materials::ofIngredient).toList());
  }

  private Material bath(String contents, String kind) {
    return materials.ofBath(contents, contents, BathKind.fromWord(kind), BottleRole.WORKING);
  }
}
