package org.wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ClosingTest {
  private final List<String> closed = new ArrayList<>();
  private final Closing closing = new Closing();

  @Test
  void closesNewestFirstAndEachOnce() {
    closing.add(() -> closed.add("home"));
    closing.add(() -> closed.add("server"));

    closing.now();
    closing.now();

    assertThat(closed).containsExactly("server", "home");
  }

  @Test
  void closesAtOnceWhatComesAfterTheEnd() throws InterruptedException {
    closing.now();
    closing.add(() -> closed.add("late"));

    closing.await();

    assertThat(closed).containsExactly("late");
  }

  @Test
  void closesTheRestWhenOneFails() {
    closing.add(() -> closed.add("home"));
    closing.add(
        () -> {
          throw new IllegalStateException("stuck");
        });

    assertThatThrownBy(closing::now).hasMessage("stuck");
    assertThat(closed).containsExactly("home");
  }
}
