package org.wetside.app.testroll;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Units;
import org.wetside.core.testroll.TestRoll;

class TestRollReaderTest {
  private final TestRollReader reader = new TestRollReader(Units.METRIC);

  private static TestRollDraft draft(String film, String index, String metered, String middle) {
    return new TestRollDraft(
        film, index, "D-76", "1+1", "20", "small", metered, middle, "", "", "", "", "");
  }

  @Test
  void whatIsNotSaidIsWhatIsUsual() {
    TestRoll roll = reader.requireComplete(draft("TRI-X 400", "400", "1/60@f8", "8:00"));
    assertThat(roll.plan().range()).hasToString("1/2 to 1/1000, f/2 to f/16");
    assertThat(roll.plan().times().middle()).isEqualTo(Duration.ofMinutes(8));
    assertThat(roll.bath()).isEqualTo("D-76 1+1");
  }

  @Test
  void everyProblemStandsBesideItsField() {
    TestRollDraft wrong =
        new TestRollDraft(
            "", "fast", "", "1:1", "warm", "bucket", "1/70@f8", "8", "24", "1/9000", "1", "f/0",
            "f/8.5");
    assertThat(reader.readComplete(wrong)).isEmpty();
    assertThat(reader.problems())
        .containsOnlyKeys(
            "film",
            "index",
            "developer",
            "dilution",
            "temp",
            "vessel",
            "metered",
            "middle",
            "frames",
            "fastest",
            "slowest",
            "widest",
            "smallest");
    assertThat(reader.problems().get("metered")).hasMessageContaining("1/70");
    assertThat(reader.problems().get("middle")).hasMessageContaining("8:00".substring(0, 1));
    assertThat(reader.problems().get("frames")).hasMessageContaining("log H 1.20");
    assertThat(reader.problems().get("slowest")).hasMessageContaining("1/2 s");
  }

  @Test
  void aPlanAloneNeedsNoNames() {
    TestRoll roll = reader.require(draft("", "", "1/60@f8", "8min"));
    assertThat(roll.index()).isEmpty();
    assertThat(reader.readComplete(draft("", "", "1/60@f8", "8min"))).isEmpty();
    assertThat(reader.problems()).containsOnlyKeys("film", "index");
  }

  @Test
  void nothingMeteredIsAskedFor() {
    assertThatThrownBy(() -> reader.require(draft("TRI-X 400", "400", "", "8min")))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("metered exposure", "1/60@f8");
    assertThatThrownBy(() -> reader.require(draft("TRI-X 400", "400", "1/60@f8", "4min")))
        .isInstanceOf(BadValueException.class)
        .hasMessageContainingAll("shortest time", "180 s");
  }
}
