package org.wetside.web.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.app.testroll.TestRollDraft;
import org.wetside.app.testroll.TestRollReader;
import org.wetside.core.quantity.Units;
import org.wetside.web.testroll.TestRollSheet;
import org.wetside.web.testroll.TestRollView;

/** The sheet of a test roll, read back from the PDF. */
class TestRollSheetTest {
  private static final TestRollView ROLL =
      TestRollView.of(
          new TestRollReader(Units.METRIC)
              .require(
                  new TestRollDraft(
                      "TRI-X 400",
                      "400",
                      "D-76",
                      "1+1",
                      "20C",
                      "",
                      "1/60@f8",
                      "8min",
                      "",
                      "",
                      "",
                      "",
                      "")));

  @ParameterizedTest
  @ValueSource(strings = {"a4", "letter"})
  void everythingStandsOnTwoPagesInBlackOnWhite(String paper) throws IOException {
    byte[] pdf = TestRollSheet.pdf(ROLL, Units.METRIC, paper);
    Printed sheet = Printed.of(pdf);
    assertThat(sheet.pages()).isEqualTo(2);
    assertThat(sheet.colour()).isLessThan(8);
    assertThat(sheet.widthMm()).isBetween(209.0, 217.0);
    assertThat(sheet.text())
        .contains("TRI-X 400 in D-76 1+1", "1/60 at f/8 at index 400", "5:45, 8:00, 11:15", "20 °C")
        .contains("piece 3, 11:15", "cut 2", "page 2 of 2");
    // 1 blank + 9 exposures + 2 for the cut; the last blank of the roll has the number 25
    assertThat(sheet.text())
        .contains("blank lens capped 1 13 25")
        .contains("−4 1/1000 at f/8 −2.90 2 14 26")
        .contains("+4 1/4 at f/8 −0.49 10 22 34")
        .contains("cut lens capped 12 24 36");
    for (TestRollView.TestStepView step : ROLL.steps()) {
      assertThat(sheet.text()).contains(step.text());
    }
    assertThat(sheet.text()).contains("L + 418 mm", "456 mm", "0 38 76 114 152");
    for (String note : ROLL.notes()) {
      assertThat(sheet.text()).contains(note);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"a4", "letter"})
  void theScaleIsPrintedInTrueSize(String paper) throws IOException {
    byte[] pdf = TestRollSheet.pdf(ROLL, Units.METRIC, paper);
    // four frames of 38 mm; a dot of 150 per inch is 0.17 mm
    assertThat(Printed.linesMm(pdf, 1)).anyMatch(line -> line > 151.5 && line < 153.0);
  }
}
