package org.wetside.app.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetside.app.Wetside;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.source.Standing;
import org.wetside.reference.BuiltInProcesses;

/** Own processes kept, changed, refused, removed. What is typed here is invented. */
class KeepProcessTest {
  private Wetside wetside;
  private KeepProcess keep;

  @BeforeEach
  void open(@TempDir Path home) {
    wetside = Wetside.open(home, Clock.systemUTC());
    keep = wetside.keepProcess();
  }

  @AfterEach
  void close() {
    wetside.close();
  }

  static Stream<FilmProcess> builtIn() {
    return BuiltInProcesses.all().stream();
  }

  @ParameterizedTest
  @MethodSource("builtIn")
  void aCopyOfAnyBuiltInProcessSaysTheSameInEveryStep(FilmProcess process) {
    FilmProcess copy = keep.copy(process.slug(), "mine", "").orRefuse();
    assertThat(copy.steps()).isEqualTo(process.steps());
    assertThat(copy.name()).isEqualTo("Mine");
    assertThat(wetside.findProcess().of("mine")).isEqualTo(copy);
    assertThat(wetside.findProcess().all()).contains(process, copy);
  }

  @ParameterizedTest
  @MethodSource("builtIn")
  void theTextOfAnyProcessReadsBackToTheSameSteps(FilmProcess process) {
    ProcessDraft read = ProcessText.parse(ProcessText.of(process));
    assertThat(read.slug()).isEqualTo(process.slug());
    assertThat(read.about()).isEqualTo(process.about());
    FilmProcess kept = keep.add(read.named("from-text", "From a text")).orRefuse();
    assertThat(kept.steps()).isEqualTo(process.steps());
  }

  @Test
  void aChangedStepIsNoLongerWhatItsSourceSays() {
    ProcessDraft copy = ProcessDraft.of(wetside.findProcess().of("small-tank"));
    List<StepDraft> steps = new ArrayList<>(copy.steps());
    steps.set(2, with(steps.get(2), StepField.TIME, "8:00"));
    steps.set(1, with(steps.get(1), StepField.BOTTLE, "T"));
    steps.set(
        4, with(with(steps.get(4), StepField.TIME, "3:00"), StepField.SOURCE, "leaflet, side 2"));
    steps.add(1, new StepDraft(Map.of(StepField.KIND, "rinse", StepField.TIME, "1:00")));
    FilmProcess kept = keep.add(new ProcessDraft("", "Harbour tank, 2", "", steps)).orRefuse();
    assertThat(kept.slug()).isEqualTo("harbour-tank-2");
    assertThat(kept.steps()).hasSize(8);
    Step fixer = kept.steps().get(3);
    assertThat(fixer.duration()).contains(Duration.ofMinutes(8));
    assertThat(fixer.lengthenTo()).contains(Duration.ofMinutes(10));
    assertThat(fixer.standing()).isEqualTo(Standing.FROM_MEMORY);
    assertThat(fixer.source()).startsWith("changed from: CH-S07");
    Step stop = kept.steps().get(2);
    assertThat(stop.standing()).as("another bottle changes no value").isEqualTo(Standing.PUBLISHED);
    assertThat(stop.bottle()).contains("T");
    Step aid = kept.steps().get(5);
    assertThat(aid.standing()).isEqualTo(Standing.PUBLISHED);
    assertThat(aid.source()).isEqualTo("leaflet, side 2");
    Step rinse = kept.steps().get(1);
    assertThat(rinse.standing()).isEqualTo(Standing.FROM_MEMORY);
    assertThat(rinse.kind()).isEqualTo(StepKind.RINSE);
    FilmProcess again = keep.change(kept.slug(), ProcessDraft.of(kept)).orRefuse();
    assertThat(again).as("kept again as it is").isEqualTo(kept);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          kind        | broth            | choose one of
          kind        | ''               | needed
          bottle      | F/1              | one to three letters
          time        | 5                | unit
          time        | ten minutes      | number and its unit
          time        | 5 s              | drain lead of 15 s
          time        | 25h              | between
          time        | ''               | only the first developer's
          temperature | 20C              | from and to
          temperature | 24 to 18C        | must not be above
          agitation   | now and then     | write it like
          agitation   | 30s, then 5s     | how often
          afterwards  | somewhere        | discard, back
          light       | dim              | dark, any
          light       | required         | dark or any
          pour-in     | 10min            | 5:00
          drain       | 6min             | 5:00
          longest     | 1:00             | between 5:00
          """)
  void whatIsWrongIsSaidBesideItsField(String field, String typed, String says) {
    ProcessDraft copy = ProcessDraft.of(wetside.findProcess().of("small-tank"));
    List<StepDraft> steps = new ArrayList<>(copy.steps());
    StepField wrong = StepField.of(field).orElseThrow();
    steps.set(2, with(steps.get(2), wrong, typed));
    KeepProcess.Outcome outcome = keep.add(new ProcessDraft("mine", "Mine", "", steps));
    assertThat(outcome)
        .isInstanceOfSatisfying(
            KeepProcess.Outcome.Unclear.class,
            unclear -> {
              assertThat(unclear.faults()).hasSize(1);
              assertThat(unclear.faults().get(0).step()).isEqualTo(3);
              assertThat(unclear.faults().get(0).field()).isEqualTo(field);
              assertThat(unclear.faults().get(0).message()).contains(says);
            });
    assertThat(wetside.findProcess().find("mine")).isEmpty();
  }

  @Test
  void everyMistakeIsNamedAtOnce() {
    List<StepDraft> steps =
        List.of(
            new StepDraft(Map.of(StepField.KIND, "developer", StepField.TEMPERATURE, "warm")),
            new StepDraft(Map.of(StepField.KIND, "fixer", StepField.TIME, "5")));
    assertThatThrownBy(() -> keep.add(new ProcessDraft("small-tank", "", "", steps)).orRefuse())
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("4 mistakes")
        .hasMessageContaining("built in")
        .hasMessageContaining("process name")
        .hasMessageContaining("step 1, temperature")
        .hasMessageContaining("step 2, time");
  }

  @Test
  void lightSeenCannotBeUnseenAndADeveloperStaysDark() {
    List<StepDraft> steps =
        List.of(
            step("developer", "9:00", "any"),
            step("fixer", "5:00", "dark"),
            step("wash", "5:00", "any"));
    assertThatThrownBy(() -> keep.add(new ProcessDraft("", "Mine", "", steps)).orRefuse())
        .hasMessageContaining("step 1, light")
        .hasMessageContaining("fogged")
        .hasMessageContaining("step 2, light")
        .hasMessageContaining("seen light");
    List<StepDraft> wash = List.of(step("wash", "5:00", "any"));
    assertThatThrownBy(() -> keep.add(new ProcessDraft("", "Wash", "", wash)).orRefuse())
        .hasMessageContaining("a developer or a monobath");
  }

  @ParameterizedTest
  @CsvSource({
    "small-tank, built in",
    "new, must not be",
    "12, needs a letter",
    "Mine!, lower-case",
    "taken, already"
  })
  void aShortNameMustBeFreeAndPlain(String slug, String says) {
    keep.copy("rotary", "taken", "Taken").orRefuse();
    assertThatThrownBy(() -> keep.copy("rotary", slug, "Another").orRefuse())
        .hasMessageContaining(says);
    assertThatThrownBy(() -> keep.copy("rotary", "free", "taken").orRefuse())
        .hasMessageContaining("of that name");
  }

  @Test
  void aBuiltInOneIsNeitherChangedNorRemoved() {
    ProcessDraft draft = ProcessDraft.of(wetside.findProcess().of("rotary"));
    assertThatThrownBy(() -> keep.change("rotary", draft)).hasMessageContaining("built in");
    assertThatThrownBy(() -> wetside.removeProcess().remove("rotary"))
        .hasMessageContaining("built in");
    assertThatThrownBy(() -> keep.change("nowhere", draft)).hasMessageContaining("no process");
    assertThatThrownBy(() -> wetside.removeProcess().remove("nowhere"))
        .hasMessageContaining("no process");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          time 5:00       | line 1
          kind: fixer     | process, name and about
          name: a\\nname: b | said twice
          step: fixer\\nwarmth: 20C | a step has
          step: fixer\\ntime: 5:00\\ntime: 6:00 | twice in one step
          """)
  void aTextThatCannotBeUnderstoodIsRefusedByItsLine(String text, String says) {
    assertThatThrownBy(() -> ProcessText.parse(text.replace("\\n", "\n")))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("line ")
        .hasMessageContaining(says);
  }

  private static StepDraft step(String kind, String time, String light) {
    return new StepDraft(
        Map.of(StepField.KIND, kind, StepField.TIME, time, StepField.LIGHT, light));
  }

  private static StepDraft with(StepDraft step, StepField field, String typed) {
    Map<StepField, String> fields = new EnumMap<>(step.fields());
    fields.put(field, typed);
    return new StepDraft(fields);
  }
}
