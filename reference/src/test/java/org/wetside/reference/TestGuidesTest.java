package org.wetside.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.wetside.core.trial.StepMoment;
import org.wetside.core.trial.TrialGuide;
import org.wetside.core.trial.TrialKind;
import org.wetside.core.trial.TrialStep;

/** The guided tests as they stand on file. */
class TestGuidesTest {
  private static final TestGuides GUIDES = TestGuides.open();

  @ParameterizedTest
  @EnumSource
  void everyTestIsWhole(TrialKind kind) {
    TrialGuide guide = GUIDES.of(kind);
    assertThat(guide.steps().stream().map(TrialStep::number))
        .containsExactlyElementsOf(IntStream.rangeClosed(1, guide.steps().size()).boxed().toList());
    assertThat(guide.steps().stream().map(TrialStep::moment).toList()).isSorted();
    assertThat(guide.at(StepMoment.START)).hasSize(1);
    assertThat(guide.at(StepMoment.JUDGE)).isNotEmpty();
    assertThat(guide.at(StepMoment.AFTER)).isNotEmpty();
    assertThat(guide.steps()).anyMatch(step -> !step.handles().isEmpty());
  }

  /** CH-S13 p.139: one drop, 2 minutes. */
  @Test
  void theDropIsLeftForTwoMinutes() {
    assertThat(GUIDES.of(TrialKind.RESIDUE).leftFor()).contains(Duration.ofMinutes(2));
    assertThat(GUIDES.of(TrialKind.CLEARING).leftFor()).isEmpty();
  }

  /** CH-S14 p.108: 10 mL of iodide solution in 100 mL of fixer. */
  @Test
  void theQuantitiesOfTheIodideTestAreThoseOfTheFormula() {
    List<String> words =
        GUIDES.of(TrialKind.IODIDE).at(StepMoment.BEFORE).stream().map(TrialStep::words).toList();
    for (ReferenceRow row : ReferenceTable.open("baths/formula_steps").rows()) {
      if (row.text("formula").equals("KI-TEST")) {
        String amount = (int) row.number("amount") + " " + row.text("unit");
        assertThat(words).as(row.toString()).anyMatch(said -> said.contains(amount));
      }
    }
  }

  /** CH-S13 p.139: 7.5 g silver nitrate and 125 mL acetic acid 28 % in a litre. */
  @Test
  void theDropIsMadeAsItsFormulaSaysAndOfferedAsATestKitOnly() {
    String made = GUIDES.of(TrialKind.RESIDUE).at(StepMoment.BEFORE).get(0).words();
    assertThat(made).contains("7.5 g", "125 mL", "test kit");
    assertThat(
            ReferenceTable.open("baths/formulas").rows().stream()
                .filter(row -> row.text("formula").equals("HT-2"))
                .map(row -> row.text("offer")))
        .containsExactly("test kit");
  }

  @Test
  void silverNitrateHasItsCautionAtEveryStepThatHandlesIt() {
    List<TrialStep> handling =
        GUIDES.of(TrialKind.RESIDUE).steps().stream()
            .filter(step -> step.handles().contains("silver nitrate"))
            .toList();
    assertThat(handling).hasSizeGreaterThan(3);
    assertThat(Cautions.open().of(handling.get(0).handles()))
        .anyMatch(caution -> caution.line().contains("burns; stains"));
  }
}
