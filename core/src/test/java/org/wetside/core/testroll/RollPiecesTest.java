package org.wetside.core.testroll;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.wetside.core.quantity.BadValueException;

class RollPiecesTest {
  @Test
  void thirtySixFramesLeaveNineExposuresAPiece() {
    RollPieces roll = new RollPieces(36);
    // 36 / 3 = 12; less one blank and two to cut through: 9
    assertThat(roll.exposures()).isEqualTo(9);
    assertThat(roll.blankFrame(2)).isEqualTo(13);
    // after frame 11: 11 x 38 mm; after frame 23: 23 x 38 mm
    assertThat(roll.cutAfter(1)).isEqualTo(418.0);
    assertThat(roll.cutAfter(2)).isEqualTo(874.0);
  }

  @Test
  void twentyFourFramesLeaveFiveExposuresAPiece() {
    // 24 / 3 = 8; less one blank and two to cut through: 5
    assertThat(new RollPieces(24).exposures()).isEqualTo(5);
  }

  @Test
  void anotherNumberOfFramesOrPieceIsRefused() {
    assertThatThrownBy(() -> new RollPieces(12))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("frames", "12", "24 or 36");
    assertThatThrownBy(() -> new RollPieces(36).cutAfter(4))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("piece", "4", "1 to 3");
  }
}
