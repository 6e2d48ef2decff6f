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
    // 12 x 38 mm
    assertThat(roll.fromCutToCut()).isEqualTo(456.0);
  }

  @Test
  void twentyFourFramesAreRefusedWithTheReason() {
    // 24 / 3 - 3 = 5 exposures, 4 stops of 0.301 apart: 1.20
    assertThatThrownBy(() -> new RollPieces(24))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("frames", "24", "log H 1.20", "1.30", "36 frames");
  }

  @Test
  void anotherNumberOfFramesOrPieceIsRefused() {
    assertThatThrownBy(() -> new RollPieces(12))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("frames", "12", "36");
    assertThatThrownBy(() -> new RollPieces(36).cutAfter(4))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("piece", "4", "1 to 3");
  }
}
