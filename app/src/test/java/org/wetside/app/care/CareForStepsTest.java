package org.wetside.app.care;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetside.app.Wetside;
import org.wetside.app.formula.MixBatch;
import org.wetside.app.formula.WeighOut;
import org.wetside.core.bath.BathKind;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.reference.BuiltInProcesses;
import org.wetside.reference.Caution;

/** What is said of baths when they are handled, over a real shelf. */
class CareForStepsTest {
  private static final String NONE = "no caution on file: read the maker's safety data sheet first";

  private Wetside wetside;

  @TempDir private Path home;

  @BeforeEach
  void open() {
    wetside = Wetside.open(home, Clock.systemUTC());
  }

  @AfterEach
  void close() {
    wetside.close();
  }

  static Stream<FilmProcess> builtIn() {
    return BuiltInProcesses.all().stream();
  }

  /** Colour and reversal too, whatever stands on the shelf: for each bath at least one line. */
  @ParameterizedTest
  @MethodSource("builtIn")
  void everyBathOfEveryBuiltInProcessHasACautionOrSaysThatThereIsNone(FilmProcess process) {
    List<BathCare> care = wetside.careForSteps().of(process.steps(), "");
    List<Integer> fromBottles =
        Stream.iterate(0, i -> i < process.steps().size(), i -> i + 1)
            .filter(i -> process.steps().get(i).kind().bath().isPresent())
            .toList();
    assertThat(care).extracting(BathCare::step).isEqualTo(fromBottles);
    assertThat(care)
        .allSatisfy(
            bath -> {
              assertThat(bath.cautions()).isNotEmpty();
              assertThat(bath.inShort()).isNotBlank();
              assertThat(bath.inShort().contains(NONE)).isEqualTo(!bath.isOnFile());
            });
  }

  @Test
  void theBottleOnTheShelfSaysWhatIsInTheBath() {
    bottle("D", "D-76", BathKind.DEVELOPER);
    bottle("F", "TF-3", BathKind.FIXER);
    List<BathCare> care = smallTank("soup");
    assertThat(care.get(0).bath()).isEqualTo("developer (bottle D, D-76)");
    assertThat(care.get(0).isOnFile()).isTrue();
    assertThat(care.get(0).inShort())
        .isEqualTo(
            "gloves, no dust, ventilate, goggles for powder, no skin contact, avoid in pregnancy");
    assertThat(of(care, BathKind.FIXER).cautions())
        .extracting(Caution::about)
        .contains("ammonium thiosulfate", "never together: acid + thiosulfate or sulfite");
  }

  @Test
  void withoutABottleTheNameOfTheDeveloperTells() {
    assertThat(smallTank("D-76").get(0).cautions())
        .extracting(Caution::about)
        .contains("hydroquinone");
    assertThat(smallTank("soup").get(0).inShort()).isEqualTo("soup: " + NONE);
  }

  /** A bottle of another kind of bath under the letter says nothing of the one that is poured. */
  @Test
  void aBottleOfAnotherBathSaysNothing() {
    bottle("F", "D-76", BathKind.DEVELOPER);
    assertThat(of(smallTank(""), BathKind.FIXER).inShort()).isEqualTo(NONE);
  }

  /** Acid stop before an alkaline fixer: CH-S14 p.106; after a strong alkali: CH-S07. */
  @Test
  void neighboursThatShouldNotMeetAreSaidAtTheSecondOfThem() {
    bottle("D", "D-19", BathKind.DEVELOPER);
    bottle("S", "SB-1", BathKind.STOP_BATH);
    bottle("F", "TF-3", BathKind.FIXER);
    List<BathCare> care = smallTank("D-19");
    assertThat(of(care, BathKind.DEVELOPER).against()).isEmpty();
    assertThat(of(care, BathKind.STOP_BATH).against())
        .extracting(one -> one.rule().name())
        .containsExactly("acid stop after a strongly alkaline developer");
    assertThat(of(care, BathKind.FIXER).against())
        .extracting(one -> one.rule().name() + " before step " + (one.position() + 1))
        .containsExactly("acid stop before an alkaline fixer before step 3");
  }

  /** What was weighed into a batch tells what the name on its bottle does not. */
  @Test
  void aBatchTellsWhatANameDoesNot() {
    bottle("S", "kitchen stop", BathKind.STOP_BATH);
    assertThat(of(smallTank(""), BathKind.STOP_BATH).isOnFile()).isFalse();
    MixBatch mix = wetside.mixBatch();
    long batch =
        mix.begin(
                new WeighOut.Question(
                    "SB-8", Optional.empty(), List.of(), Optional.empty(), Optional.empty()))
            .id();
    mix.done(batch, 1, "750mL");
    mix.done(batch, 2, "15g");
    mix.done(batch, 3, "1L");
    mix.fill(batch, "S");
    assertThat(of(smallTank(""), BathKind.STOP_BATH).cautions())
        .extracting(Caution::about)
        .contains("citric acid");
  }

  private List<BathCare> smallTank(String developer) {
    FilmProcess process = wetside.findProcess().of("small-tank");
    return wetside
        .careForSteps()
        .of(process.steps().stream().map(this::lettered).toList(), developer);
  }

  private Step lettered(Step step) {
    Optional<String> letter =
        step.kind() == StepKind.DEVELOPER
            ? Optional.of("D")
            : step.kind() == StepKind.STOP_BATH
                ? Optional.of("S")
                : step.kind() == StepKind.FIXER ? Optional.of("F") : Optional.empty();
    return step.withBottle(letter, step.afterUse());
  }

  private static BathCare of(List<BathCare> care, BathKind kind) {
    return care.stream()
        .filter(bath -> bath.bath().startsWith(kind.word()))
        .findFirst()
        .orElseThrow();
  }

  private void bottle(String letter, String contents, BathKind bath) {
    Volume litre = Volume.ofLitres(1);
    wetside
        .addBottle()
        .add(BottleLabel.of(letter, contents, BottleRole.WORKING, bath, litre), litre);
  }
}
