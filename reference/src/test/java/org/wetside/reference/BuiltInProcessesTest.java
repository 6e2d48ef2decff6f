package org.wetside.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wetside.core.process.Act;
import org.wetside.core.process.Cue;
import org.wetside.core.process.CueSheet;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.process.Timeline;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.source.Standing;

class BuiltInProcessesTest {
  private static FilmProcess process(String slug) {
    return BuiltInProcesses.all().stream()
        .filter(process -> process.slug().equals(slug))
        .findFirst()
        .orElseThrow();
  }

  /** DV-S12, rows RL10 and RL11 of the rules: first 30 s, then 5 s each minute. */
  @Test
  void theSmallTankFollowsTheHandbook() {
    List<Cue> cues =
        CueSheet.along(
            Timeline.of(process("small-tank").withDevelopment(Duration.ofMinutes(9)).steps())
                .steps(),
            "");
    List<Cue> agitate =
        cues.stream().filter(cue -> cue.step() == 0 && cue.act() == Act.AGITATE).toList();
    assertThat(agitate).hasSize(9);
    assertThat(agitate.get(0).length()).isEqualTo(Duration.ofSeconds(30));
    assertThat(agitate.get(8).length()).isEqualTo(Duration.ofSeconds(5));
    assertThat(agitate.get(8).inStep()).isEqualTo(Duration.ofMinutes(8));
    Cue drain =
        cues.stream()
            .filter(cue -> cue.step() == 0 && cue.act() == Act.DRAIN)
            .findFirst()
            .orElseThrow();
    assertThat(drain.inStep()).isEqualTo(Duration.ofSeconds(525));
    assertThat(drain.at()).isEqualTo(Duration.ofSeconds(535));
  }

  /** DV-T10 table 4-1 (row C001), DV-T09 (row C006): 3:15 at 37.8 ± 0.15 °C. */
  @Test
  void theColourDeveloperIsThePublishedOne() {
    Step developer = process("colour-negative").steps().get(0);
    assertThat(developer.duration()).contains(Duration.ofSeconds(195));
    assertThat(developer.standing()).isEqualTo(Standing.PUBLISHED);
    assertThat(developer.band())
        .hasValueSatisfying(
            band -> {
              assertThat(band.low()).isEqualTo(Temperature.ofCelsius(37.65));
              assertThat(band.high()).isEqualTo(Temperature.ofCelsius(37.95));
            });
    assertThat(process("colour-negative").standing()).isEqualTo(Standing.FROM_MEMORY);
  }

  /** CH-S08 (row W3 of the wash sequences): rinse 30 s, clearing agent 2 min, water 5 min. */
  @Test
  void washesStandInForEachOther() {
    List<FilmProcess> washes = BuiltInProcesses.washes();
    assertThat(washes.get(0).steps())
        .extracting(step -> step.duration().orElseThrow().toSeconds())
        .containsExactly(30L, 120L, 300L);
    FilmProcess changed = process("small-tank").withWash(washes.get(3).steps());
    assertThat(changed.steps().stream().filter(step -> step.kind() == StepKind.WASH)).hasSize(10);
    assertThat(changed.steps().get(changed.steps().size() - 1).kind())
        .isEqualTo(StepKind.FINAL_RINSE);
    assertThat(changed.steps()).noneMatch(step -> step.kind() == StepKind.WASH_AID);
  }

  @Test
  void everyBuiltInProcessCanBeLaidOut() {
    assertThat(BuiltInProcesses.all()).extracting(FilmProcess::slug).doesNotHaveDuplicates();
    for (FilmProcess process : BuiltInProcesses.all()) {
      boolean asks = process.steps().stream().anyMatch(step -> step.duration().isEmpty());
      FilmProcess timed = asks ? process.withDevelopment(Duration.ofMinutes(8)) : process;
      List<Cue> cues = CueSheet.along(Timeline.of(timed.steps()).steps(), "");
      assertThat(cues.get(cues.size() - 1).act()).as(process.slug()).isEqualTo(Act.HANG);
    }
  }

  @Test
  void anOpenTimeBringsItsOwnLimitOnceKnown() {
    Step monobath = process("monobath").withDevelopment(Duration.ofMinutes(6)).steps().get(0);
    assertThat(monobath.lengthenTo()).contains(Duration.ofMinutes(12));
    Step developer = process("small-tank").withDevelopment(Duration.ofMinutes(6)).steps().get(0);
    assertThat(developer.lengthenTo()).isEqualTo(Optional.empty());
  }
}
