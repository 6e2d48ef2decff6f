package org.wetside.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every row of {@code checks/baths.csv}, read from the file: the program's own figures against
 * those that are printed there, so that no row can be named and its value left out. What a row
 * warns of is tested below it or where it is named.
 */
class EveryCheckRowTest {
  /** A figure, not the 2 of cm2 nor the factor of 2x. */
  private static final Pattern FIGURE =
      Pattern.compile("(?<![A-Za-z0-9.])\\d+(?:\\.\\d+)?(?:e-\\d+)?(?![0-9x.])");

  private static final Map<String, List<Double>> WORKED = WorkedRows.all();

  static List<ReferenceRow> rows() {
    return ReferenceTable.open("checks/baths").rows();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void theProgramComesToTheFiguresOfTheRow(ReferenceRow row) {
    List<String> printed = figures(row.text("expected"));
    List<Double> worked = worked(row.text("id"));
    assertThat(worked).as("%s is worked", row).hasSameSizeAs(printed);
    for (int i = 0; i < printed.size(); i++) {
      assertThat(worked.get(i))
          .as("%s, figure %d", row, i + 1)
          .isCloseTo(Double.parseDouble(printed.get(i)), within(tolerance(row, printed.get(i))));
    }
  }

  @Test
  void nothingIsWorkedThatNoRowAsksFor() {
    assertThat(rows().stream().map(row -> row.text("id")))
        .hasSize(35)
        .containsExactlyInAnyOrderElementsOf(WORKED.keySet());
  }

  /**
   * The row's own; half the last digit where the printed figure is rounder, or no number stands.
   */
  private static double tolerance(ReferenceRow row, String printed) {
    String said = row.text("tolerance");
    if (said.equals("exact") || !printed.contains(".")) {
      return 1e-9;
    }
    String[] parts = printed.split("e", -1);
    double digit = Math.pow(10, -(parts[0].length() - parts[0].indexOf('.') - 1));
    double half =
        0.500001 * digit * (parts.length > 1 ? Math.pow(10, Integer.parseInt(parts[1])) : 1);
    return FIGURE.matcher(said).matches() ? Math.max(Double.parseDouble(said), half) : half;
  }

  private static List<String> figures(String text) {
    List<String> found = new ArrayList<>();
    Matcher figure = FIGURE.matcher(text);
    while (figure.find()) {
      found.add(figure.group());
    }
    return found;
  }

  /** Row CK07: with the factors of CH-S14 p.329 as printed it would be 14.0 g. */
  @Test
  void theReversedLyeIsNotTakenAsPrinted() {
    assertThat(one("CK07")).isLessThan(7.2);
  }

  /** Row CK11 (CH-S09): printed as 9.0 of acid and 23 of water in 32 fl oz. */
  @Test
  void theRestOfTheAcidIsTheWaterThatIsPrinted() {
    assertThat(one("CK11")).isCloseTo(9.0, within(0.05));
    assertThat(32 - one("CK11")).isCloseTo(23, within(0.05));
  }

  /** Rows CK16, CK18 and CK19 (CH-S99): mass is kept, volume is not. */
  @Test
  void temperingIsNotTheRuleOfEqualVolumes() {
    double hot = 1000.0 * (20 - 15) / (50 - 15);
    assertThat(one("CK16") - hot).isGreaterThan(1.4);
    double byVolume = (500 * 20.0 - 125 * 16) / 375;
    assertThat(one("CK18") - byVolume).isBetween(0.001, 0.003);
    assertThat(one("CK19") - (500 * 20.0 - 250 * 26) / 250).isBetween(0.01, 0.02);
  }

  /** Row CK26 (CH-S30): one fill is v/(v+V) = 10/510; 10/500 is a rounder figure, not ours. */
  @Test
  void oneFillThinsByCarryOverAndFillTogether() {
    assertThat(one("CK26")).isCloseTo(10.0 / 510, within(1e-9));
    assertThat(worked("CK26").get(1)).isCloseTo(Math.pow(10.0 / 510, 2), within(1e-9));
    assertThat(one("CK26")).isLessThan(10.0 / 500);
  }

  /** Row CK40: CH-S11 prints 50.7 °C for 125 °F, 1 K too little; no step carries that figure. */
  @Test
  void theMisprintedTemperatureIsNowhere() {
    assertThat(one("CK40") - 50.7).isGreaterThan(0.9);
    assertThat(ReferenceTable.open("baths/formula_steps").rows())
        .noneMatch(row -> row.toString().contains("50.7"));
  }

  private static double one(String row) {
    return worked(row).get(0);
  }

  private static List<Double> worked(String row) {
    return WORKED.getOrDefault(row, List.of());
  }
}
