package org.wetside.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.core.development.BasisStep;
import org.wetside.core.development.TimeAnswer;

class WorkloadTest {
  /** The kinds of step each request is meant to take, after the entry itself. */
  private static final Map<Asked, List<BasisStep.Kind>> STEPS =
      Map.of(
          Asked.PRINTED, List.of(),
          Asked.OTHER_TEMPERATURE, List.of(BasisStep.Kind.TEMPERATURE),
          Asked.PUSHED, List.of(BasisStep.Kind.EXPOSURE_INDEX),
          Asked.OTHER_DILUTION, List.of(BasisStep.Kind.DILUTION),
          Asked.OTHER_VESSEL, List.of(BasisStep.Kind.VESSEL));

  @Test
  void everyEstimateTakesTheStepsItIsMeantTo() {
    EstimateBenchmark benchmark = new EstimateBenchmark();
    for (Asked asked : Asked.values()) {
      benchmark.asked = asked;
      TimeAnswer answer = benchmark.estimate();

      assertThat(benchmark.useCase()).as(asked + " by the use case").hasSameClassAs(answer);
      if (asked == Asked.REFUSED) {
        assertThat(answer).isInstanceOf(TimeAnswer.NoHonestTime.class);
      } else {
        assertThat(((TimeAnswer.Estimate) answer).basis())
            .as(asked.toString())
            .extracting(BasisStep::kind)
            .first()
            .isEqualTo(BasisStep.Kind.ENTRY);
        assertThat(((TimeAnswer.Estimate) answer).basis().stream().skip(1).map(BasisStep::kind))
            .as(asked.toString())
            .containsExactlyElementsOf(STEPS.getOrDefault(asked, List.of()));
      }
    }
  }

  @Test
  void snapshotsAreOfARunThatGoesOnAndOneThatIsOver(@TempDir Path home)
      throws IOException, InterruptedException {
    StoredRuns lived = StoredRuns.live(3, home);
    System.setProperty(SnapshotBenchmark.HOME, home.toString());
    SnapshotBenchmark benchmark = new SnapshotBenchmark();
    try {
      assertThat(benchmark.running()).contains("\"run\":4,", "\"phase\":\"running\"");
      assertThat(benchmark.finished()).contains("\"run\":1,", "\"phase\":\"finished\"");
      assertThat(benchmark.runningOverHttp()).contains("\"run\":4,", "\"phase\":\"running\"");
      assertThat(benchmark.finishedOverHttp()).contains("\"run\":1,", "\"phase\":\"finished\"");
      assertThat(lived.finished()).isEqualTo(3);
    } finally {
      benchmark.close();
    }
  }

  /** Short here; the figures of the long one are in docs/performance.md. */
  @Test
  void aLedgerIsAskedForAsItsPageIs(@TempDir Path home) {
    LongLedger.keepIn(home, 2_000);
    System.setProperty(LedgerBenchmark.HOME, home.toString());
    LedgerBenchmark benchmark = new LedgerBenchmark();
    try {
      assertThat(benchmark.fold().lines()).isEqualTo(LongLedger.LINES - 1);
      assertThat(benchmark.foldRolls()).hasSize(LongLedger.LINES / 4 - 1);
      assertThat(benchmark.page()).contains("Bottle <b>F</b>", "clip test");
      assertThat(benchmark.shelf()).contains("One bottle stands here");
    } catch (IOException | InterruptedException broken) {
      throw new AssertionError(broken);
    } finally {
      benchmark.close();
    }
  }
}
