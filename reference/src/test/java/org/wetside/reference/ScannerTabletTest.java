package org.wetside.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.sensitometry.CalibrationStep;
import org.wetside.core.sensitometry.Flare;
import org.wetside.core.sensitometry.NegativeKind;
import org.wetside.core.sensitometry.ScannerCalibration;
import org.wetside.core.sensitometry.TabletPatch;

/** A real tablet through a real scanner: curves/scanner_tablet.csv (source SE-S21). */
class ScannerTabletTest {
  private static final List<TabletPatch> TABLET =
      ReferenceTable.open("curves/scanner_tablet").rows().stream()
          .map(row -> TabletPatch.of(row.number("mean_pixel"), row.number("tablet_density")))
          .toList();

  @Test
  void theFormulaLeavesAtMostFourThousandthsAtEachStep() {
    List<CalibrationStep> steps = ScannerCalibration.byFormula(TABLET).steps();

    assertThat(steps).hasSize(TABLET.size());
    assertThat(steps)
        .allSatisfy(step -> assertThat(Math.abs(step.residual())).isLessThanOrEqualTo(0.004));
  }

  @Test
  void theTableGoesThroughTheStepsAndPredictsEachFromTheOthers() {
    ScannerCalibration table = ScannerCalibration.byTable(TABLET);

    for (TabletPatch patch : TABLET) {
      assertThat(table.densityOf(patch.pixel(), NegativeKind.SILVER).orElseThrow())
          .isCloseTo(patch.density().value(), within(1e-9));
    }
    List<CalibrationStep> inner = table.steps().subList(1, TABLET.size() - 1);
    assertThat(inner)
        .allSatisfy(step -> assertThat(Math.abs(step.residual())).isBetween(1e-9, 0.02));
    assertThat(table.largestDifference(ScannerCalibration.byFormula(TABLET)).orElseThrow())
        .isLessThan(0.005);
  }

  @Test
  void readsNothingBeyondTheTablet() {
    ScannerCalibration formula = ScannerCalibration.byFormula(TABLET);

    assertThat(formula.densestDensity()).isEqualTo(1.14);
    assertThat(formula.densityOf(2000, NegativeKind.SILVER)).isEmpty();
    assertThat(formula.densityOf(60000, NegativeKind.SILVER)).isEmpty();
    assertThatThrownBy(() -> formula.densityOf(5000, NegativeKind.STAINED))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("stained");
    assertThatThrownBy(() -> formula.densityOf(5000, NegativeKind.COLOUR))
        .isInstanceOf(BadValueException.class);
    assertThatThrownBy(() -> ScannerCalibration.byTable(TABLET.subList(0, 9)))
        .hasMessageContaining("at least 10");
    assertThatThrownBy(() -> ScannerCalibration.byFormula(TABLET.subList(0, 3)))
        .hasMessageContaining("at least 4");
  }

  /** Rows of checks/scanner_model.csv (CH-S99, SE-S23). */
  @Test
  void flareIsThatOfTheTableAndIsTakenOutAgain() {
    for (ReferenceRow row : ReferenceTable.open("checks/scanner_model").rows()) {
      double density = row.number("density");
      double seen = new Flare(0.001).seen(density);
      assertThat(seen).isCloseTo(row.number("seen_with_flare_0_001"), within(0.0006));
      assertThat(new Flare(0.005).seen(density))
          .isCloseTo(row.number("seen_with_flare_0_005"), within(0.0006));
      assertThat(new Flare(0.001).corrected(seen)).isCloseTo(density, within(1e-9));
      assertThat(Flare.from(density, seen).share()).isCloseTo(0.001, within(1e-9));
    }
  }
}
