package org.wetside.core.testroll;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.wetside.core.quantity.BadValueException;

class TestStepTest {
  @Test
  void partsFollowOneAnotherAndEachPieceIsDevelopedThenRead() {
    assertThat(Stream.of(TestStep.values()).map(TestStep::part).distinct())
        .containsExactly(TestStep.Part.values());
    assertThat(pieces(TestStep.Part.DEVELOP)).containsExactly(1, 2, 3);
    assertThat(pieces(TestStep.Part.READ)).containsExactly(1, 2, 3, 0);
  }

  @Test
  void everyWordReadsBackAndNoOther() {
    for (TestStep step : TestStep.values()) {
      assertThat(TestStep.fromWord(" " + step.word())).isEqualTo(step);
    }
    assertThatThrownBy(() -> TestStep.fromWord("develop-4"))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("step of a test roll", "develop-4", "expose");
  }

  private static Stream<Integer> pieces(TestStep.Part part) {
    return Stream.of(TestStep.values()).filter(step -> step.part() == part).map(TestStep::piece);
  }
}
