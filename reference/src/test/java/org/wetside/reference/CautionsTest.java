package org.wetside.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.Step;

/** Nothing is handled without a caution: one on file, or the sentence that there is none. */
class CautionsTest {
  private static final String NONE = "no caution on file: read the maker's safety data sheet first";

  private static final Set<String> ON_FILE =
      ReferenceTable.open("baths/hazards").rows().stream()
          .map(row -> row.text("hazard"))
          .collect(Collectors.toSet());

  private final Cautions cautions = Cautions.open();

  static Stream<String> ingredients() {
    return ReferenceTable.open("baths/formula_steps").rows().stream()
        .map(row -> row.text("ingredient"))
        .filter(ingredient -> !Cautions.isWater(ingredient))
        .distinct();
  }

  @ParameterizedTest
  @MethodSource("ingredients")
  void everyIngredientOfEveryFormulaHasARowOrSaysThatThereIsNone(String ingredient) {
    assertEachIsOnFileOrSaysNone(cautions.of(ingredient));
  }

  static Stream<String> formulas() {
    return ReferenceTable.open("baths/formulas").rows().stream().map(row -> row.text("formula"));
  }

  /** Each ingredient of a formula is answered for, not only the first. */
  @ParameterizedTest
  @MethodSource("formulas")
  void aFormulaCautionsForEachOfItsIngredients(String formula) {
    List<Caution> all = cautions.of(formula);
    assertEachIsOnFileOrSaysNone(all);
    ReferenceTable.open("baths/formula_steps").rows().stream()
        .filter(row -> row.text("formula").equals(formula))
        .map(row -> row.text("ingredient"))
        .filter(ingredient -> !Cautions.isWater(ingredient))
        .forEach(ingredient -> assertThat(all).containsAll(cautions.of(ingredient)));
  }

  static Stream<Step> builtInBaths() {
    return BuiltInProcesses.all().stream()
        .map(FilmProcess::steps)
        .flatMap(List::stream)
        .filter(step -> step.kind().bath().isPresent());
  }

  /** Colour and reversal too: bleach, bleach-fix, clearing bath, stabiliser. */
  @ParameterizedTest
  @MethodSource("builtInBaths")
  void everyBathOfEveryBuiltInProcessHasARowOrSaysThatThereIsNone(Step step) {
    List<Caution> all = cautions.whenHandling(step.kind().word(), step.kind().bath().orElseThrow());
    assertEachIsOnFileOrSaysNone(all);
    assertThat(all).extracting(Caution::hazard).contains(NONE);
  }

  private static void assertEachIsOnFileOrSaysNone(List<Caution> all) {
    assertThat(all)
        .isNotEmpty()
        .allSatisfy(
            one -> {
              assertThat(ON_FILE.contains(one.hazard()) || one.hazard().equals(NONE))
                  .as(one.line())
                  .isTrue();
              assertThat(one.citation().sourceId()).isNotBlank();
            });
  }

  @ParameterizedTest
  @CsvSource({
    "sodium sulfite anhydrous, sodium sulfite",
    "glacial acetic acid, acetic acid glacial",
    "acetic acid 28%, acetic acid over 25%",
    "acetic acid 2%, acetic acid 10-25% / working 1-2%",
    "acetic acid 99%, acetic acid glacial",
    "sodium metaborate, 'borax, metaborate'",
    "p-aminophenol, p-aminophenol",
    "sodium sulfate, sodium sulfate",
    "potassium bromide, potassium bromide"
  })
  void aNameLeadsToTheRowThatIsMeant(String name, String about) {
    Caution first = cautions.of(name).get(0);
    assertThat(first.about()).isEqualTo(about);
    if (name.toLowerCase(Locale.ROOT).equals(about) && !ON_FILE.contains(first.hazard())) {
      assertThat(first.hazard()).isEqualTo(NONE);
    }
  }

  /** An acid whose strength nobody stated is cautioned for at every strength. */
  @ParameterizedTest
  @CsvSource({"acetic acid, 3", "acetic acid 28%, 1", "sulfuric acid, 2", "D-76 1+1, 4"})
  void howManyCautionsANameGets(String name, int count) {
    assertThat(cautions.of(name)).hasSize(count);
  }
}
