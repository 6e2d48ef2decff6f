package org.wetside.core.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every pair of phase and event, written out: a plus where the event is allowed. */
class TransitionsTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "# event,        ready running waiting finished abandoned",
    "started,        + - - - -",
    "step begun,     - + + - -",
    "step drained,   - + + - -",
    "lengthened,     - + - - -",
    "cut short,      - + - - -",
    "waiting begun,  - + - - -",
    "wait asked,     + + + - -",
    "wait withdrawn, + + + - -",
    "reading taken,  + + + - -",
    "cue missed,     - + + - -",
    "mishap,         - + + - -",
    "note,           + + + + +",
    "gap,            - + + - -",
    "undone,         + + + + +",
    "finished,       - + + - -",
    "abandoned,      + + + - -",
  })
  void allowsWhatTheTableSays(String event, String marks) {
    if (event.startsWith("#")) {
      assertThat(EventKind.values()).hasSize(16);
      return;
    }
    List<String> allowed = new ArrayList<>();
    for (Phase phase : Phase.values()) {
      allowed.add(Transitions.allows(phase, EventKind.fromWord(event)) ? "+" : "-");
    }
    assertThat(String.join(" ", allowed)).isEqualTo(marks);
  }
}
