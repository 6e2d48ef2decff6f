package org.wetside.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.core.sensitometry.ContrastDescription;
import org.wetside.core.sensitometry.ContrastPoint;
import org.wetside.core.sensitometry.Saturation;

/** Where published contrast against time follows the exponential, and where it does not. */
class ContrastDescriptionsTest {
  private static ContrastDescription describe(String id) {
    List<ContrastPoint> points =
        DevelopmentTimes.library().contrast().stream()
            .filter(series -> series.id().equals(id))
            .findFirst()
            .orElseThrow()
            .points();
    return ContrastDescription.of(points);
  }

  /** Rows of development/contrast.csv: TRI-X Pan in T-MAX (F-9), T-MAX 100 (F-4016), DV-S21. */
  @ParameterizedTest
  @CsvSource({"CI02, TRI-X Pan in T-MAX", "CI05, T-MAX 100 in D-76", "CI06, T-MAX 100 in T-MAX"})
  void isRefusedWhereTheCurveBendsUp(String id, String what) {
    ContrastDescription description = describe(id);

    assertThat(description).as(what).isInstanceOf(ContrastDescription.Refused.class);
    assertThat(((ContrastDescription.Refused) description).reason()).contains("do not bend down");
  }

  /** Row CI01 (F-9 p.8, DV-S21); K06 and K07 (DV-S03) give these parameters of the same curve. */
  @Test
  void describesTriXPanInD76() {
    ContrastDescription.Described found = (ContrastDescription.Described) describe("CI01");

    assertThat(found.saturation().limit()).isCloseTo(1.1649, within(0.002));
    assertThat(found.saturation().ratePerMinute()).isCloseTo(0.0818, within(0.0003));
    assertThat(found.saturation().delayMinutes()).isCloseTo(0.9448, within(0.01));
    assertThat(found.residual()).isLessThan(0.002);
    assertThat(found.warnings()).isEmpty();
  }

  /** Row CI03 (DV-S21): described, but contrast would begin before the developer is poured. */
  @Test
  void warnsOfANegativeDelay() {
    ContrastDescription.Described found = (ContrastDescription.Described) describe("CI03");

    assertThat(found.warnings()).singleElement().asString().contains("before the developer");
  }

  /** Rows K06, K07 (F-9, DV-S03). */
  @Test
  void theClosedFormOfF9() {
    Saturation curve = new Saturation(1.1649, 0.0818, 0.9448);

    assertThat(curve.at(13)).isCloseTo(0.730, within(0.001)).isCloseTo(0.72, within(0.02));
    assertThat(curve.minutesFor(0.56).orElseThrow()).isCloseTo(8.96, within(0.01));
    assertThat(curve.minutesFor(1.1649)).isEmpty();
  }

  /** Row K08 (P-255, DV-S08): without delay. */
  @Test
  void theClosedFormOfTechnidol() {
    Saturation curve = new Saturation(0.7764, 0.2076, 0);
    double[] printed = {0.50, 0.60, 0.65, 0.70};
    double[] computed = {0.501, 0.595, 0.657, 0.697};
    for (int i = 0; i < 4; i++) {
      assertThat(curve.at(5 + 2 * i))
          .isCloseTo(computed[i], within(0.0006))
          .isCloseTo(printed[i], within(0.01));
    }
  }

  /** Rows of checks/kinetics.csv (SE-S30): γ∞ 1.20, k 0.15. */
  @Test
  void theClosedFormsOfTheKinetics() {
    int seen = 0;
    for (ReferenceRow row : ReferenceTable.open("checks/kinetics").rows()) {
      if (row.text("quantity").equals("gamma(t)")) {
        double delay = row.text("given").endsWith("t0=0.5") ? 0.5 : 0;
        Saturation curve = new Saturation(1.20, 0.15, delay);
        assertThat(curve.at(row.number("at"))).isCloseTo(row.number("value"), within(1e-6));
        seen++;
      }
      if (row.text("quantity").equals("time for gamma 0.62")) {
        double delay = row.text("given").endsWith("t0=0.5") ? 0.5 : 0;
        assertThat(new Saturation(1.20, 0.15, delay).minutesFor(0.62).orElseThrow())
            .isCloseTo(row.number("value"), within(1e-6));
        seen++;
      }
    }
    assertThat(seen).isEqualTo(15);
  }
}
