package org.wetside.core.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.core.quantity.OpticalDensity;

class PatchRectangleTest {
  @Test
  void aStripIsDividedAlongItsLongerSideWithoutTheEdgesOfItsSteps() {
    List<PatchRectangle> lying = new PatchRectangle("strip", 100, 50, 210, 40).divided(21, 1);

    assertThat(lying).hasSize(21);
    assertThat(lying.get(0)).isEqualTo(new PatchRectangle("1", 102, 50, 6, 40));
    assertThat(lying.get(20)).isEqualTo(new PatchRectangle("21", 302, 50, 6, 40));
    assertThat(new PatchRectangle("s", 0, 0, 40, 200).divided(10, 5).get(9))
        .isEqualTo(new PatchRectangle("14", 0, 184, 40, 12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "p    | -1 |  0 | 10 | 10 | left of patch p | at least 0",
        "p    |  0 | -4 | 10 | 10 | top of patch p | at least 0",
        "p    |  0 |  0 |  0 | 10 | width of patch p | at least 1",
        "p    |  0 |  0 | 10 |  0 | height of patch p | at least 1",
        "a,b  |  0 |  0 | 10 | 10 | label of the patch | commas",
        "''   |  0 |  0 | 10 | 10 | label of the patch | 1 to 40"
      })
  void whatIsNoRectangleIsRefused(
      String label, int x, int y, int width, int height, String thing, String limit) {
    assertThatThrownBy(() -> new PatchRectangle(label, x, y, width, height))
        .hasMessageContaining(thing)
        .hasMessageContaining(limit);
  }

  @Test
  void oneThatLeavesThePictureIsRefusedWithTheSizeOfThePicture() {
    assertThatThrownBy(() -> new PatchRectangle("7", 90, 0, 20, 10).inside(100, 100))
        .hasMessageContaining("patch 7")
        .hasMessageContaining("100×100");
  }

  @Test
  void aTabletIsWrittenFromClearToDenseWithItsOrigin() {
    TabletStep clear = new TabletStep("1", OpticalDensity.of(0.05));
    TabletStep dense = new TabletStep("2", OpticalDensity.of(1));

    assertThat(new StepTablet("T", "sheet", List.of(clear, dense)).step(" 2 ")).contains(dense);
    assertThatThrownBy(() -> new StepTablet("T", "sheet", List.of(dense, clear)))
        .hasMessageContaining("density of step 1")
        .hasMessageContaining("clear to dense");
    assertThatThrownBy(() -> new StepTablet("T", " ", List.of(clear, dense)))
        .hasMessageContaining("where they come from");
    assertThatThrownBy(() -> new StepTablet("T", "sheet", List.of(clear)))
        .hasMessageContaining("at least two");
    assertThatThrownBy(
            () ->
                new StepTablet(
                    "T", "sheet", List.of(clear, new TabletStep("1", OpticalDensity.of(2)))))
        .hasMessageContaining("each label once");
  }
}
