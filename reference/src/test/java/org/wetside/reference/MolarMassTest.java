package org.wetside.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openscience.cdk.interfaces.IMolecularFormula;
import org.openscience.cdk.silent.SilentChemObjectBuilder;
import org.openscience.cdk.tools.manipulator.MolecularFormulaManipulator;
import org.wetside.core.chemistry.Composition;
import org.wetside.core.chemistry.Formula;
import org.wetside.core.chemistry.FormulaStep;
import org.wetside.core.chemistry.Substance;

/** Molar masses against another library of chemistry, and the rows of checks/baths.csv. */
class MolarMassTest {
  private static final Chemicals CHEMICALS = Chemicals.open();

  /**
   * The other library averages its own table of isotopes, which gives sulfur 32.065 where the
   * conventional weight is 32.06 (IUPAC gives an interval): at most 1.5 parts in 10,000. A single
   * hydrogen too few in the heaviest substance here would be 16 in 10,000.
   */
  private static final double RELATIVE = 1.5e-4;

  static List<Substance> substances() {
    return CHEMICALS.substances().all();
  }

  static List<ReferenceRow> rows() {
    return ReferenceTable.open("baths/molar_masses").rows();
  }

  static Stream<FormulaStep> ingredients() {
    return Formulas.open(CHEMICALS.substances()).all().stream()
        .flatMap(formula -> formula.steps().stream())
        .filter(step -> step.kind() == FormulaStep.Kind.INGREDIENT);
  }

  @ParameterizedTest
  @MethodSource("substances")
  void everySubstanceWeighsWhatAnotherLibrarySays(Substance substance) {
    double ours = substance.molarMass().orElseThrow().gramsPerMole();
    double theirs = elsewhere(substance.formula());
    assertThat(ours).as(substance.name()).isCloseTo(theirs, within(theirs * RELATIVE));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void everyRowOfTheListIsWhatItsFormulaWeighs(ReferenceRow row) {
    String formula = row.text("formula");
    double ours = CHEMICALS.weights().of(Composition.parse(formula)).gramsPerMole();
    assertThat(ours).isCloseTo(row.number("grams_per_mol"), within(0.0006));
    double theirs = elsewhere(formula);
    assertThat(ours).isCloseTo(theirs, within(theirs * RELATIVE));
    assertThat(CHEMICALS.substances().require(row.text("chemical")).formula()).isEqualTo(formula);
  }

  /** Only the fixer that a test kit is tried on is no substance. */
  @ParameterizedTest
  @MethodSource("ingredients")
  void everyIngredientOfEveryFormulaIsASubstanceWithAMass(FormulaStep step) {
    if (step.ingredient().equals("fixer under test")) {
      assertThat(step.substance()).isEmpty();
      return;
    }
    Substance meant = step.substance().orElseThrow(() -> new AssertionError(step.ingredient()));
    assertThat(meant.molarMass()).as(step.ingredient()).isPresent();
  }

  /** Row CK01 (CH-S53). */
  @Test
  void silverWeighsWhatIupacSays() {
    assertThat(CHEMICALS.weights().of(Composition.parse("Ag")).gramsPerMole()).isEqualTo(107.8682);
  }

  /** Row CK02 (CH-S53). */
  @Test
  void hypoCrystalsWeighWhatTheirFormulaSays() {
    assertThat(CHEMICALS.weights().of(Composition.parse("Na2S2O3.5H2O")).gramsPerMole())
        .isCloseTo(248.172, within(0.01));
  }

  @Test
  void formulasAreReadWithTheirOwnSteps() {
    List<Formula> all = Formulas.open(CHEMICALS.substances()).all();
    assertThat(all).hasSize(29);
    assertThat(all).allSatisfy(one -> assertThat(one.steps()).as(one.code()).isNotEmpty());
  }

  /** The library reads no dots: each part is weighed by itself. */
  private static double elsewhere(String formula) {
    double sum = 0;
    for (String part : formula.split("\\.", -1)) {
      int digits = 0;
      while (digits < part.length() && Character.isDigit(part.charAt(digits))) {
        digits++;
      }
      int times = digits == 0 ? 1 : Integer.parseInt(part.substring(0, digits));
      IMolecularFormula read =
          MolecularFormulaManipulator.getMolecularFormula(
              part.substring(digits), SilentChemObjectBuilder.getInstance());
      sum +=
          times * MolecularFormulaManipulator.getMass(read, MolecularFormulaManipulator.MolWeight);
    }
    return sum;
  }
}
