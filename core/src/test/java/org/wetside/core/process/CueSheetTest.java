package org.wetside.core.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CueSheetTest {
  private static final List<Cue> ORDINARY =
      CueSheet.along(Timeline.of(SomeSteps.ordinary()).steps(), "");

  private static Cue only(int step, Act act) {
    List<Cue> found =
        ORDINARY.stream().filter(cue -> cue.step() == step && cue.act() == act).toList();
    assertThat(found).as(act + " of step " + step).hasSize(1);
    return found.get(0);
  }

  @Test
  void aNineMinuteDeveloperDrainsAt525OfItsOwnClockAnd535OfTheRun() {
    Cue drain = only(0, Act.DRAIN);
    assertThat(drain.inStep()).isEqualTo(Duration.ofSeconds(525));
    assertThat(drain.at()).isEqualTo(Duration.ofSeconds(535));
    assertThat(only(1, Act.POUR).at()).isEqualTo(Duration.ofSeconds(550));
  }

  /** DV-S12 (rules RL10, RL11): 30 s continuous, then 5 s each minute. */
  @Test
  void theHandbookAgitates30SecondsThenFiveEachMinute() {
    List<Duration> moments =
        ORDINARY.stream()
            .filter(cue -> cue.step() == 0 && cue.act() == Act.AGITATE)
            .map(Cue::inStep)
            .toList();
    assertThat(moments)
        .containsExactly(
            Duration.ZERO,
            Duration.ofMinutes(1),
            Duration.ofMinutes(2),
            Duration.ofMinutes(3),
            Duration.ofMinutes(4),
            Duration.ofMinutes(5),
            Duration.ofMinutes(6),
            Duration.ofMinutes(7),
            Duration.ofMinutes(8));
  }

  @Test
  void noTwoCuesComeWithinASecondSoThatNoToneCoversAnother() {
    for (int i = 1; i < ORDINARY.size(); i++) {
      Duration apart = ORDINARY.get(i).at().minus(ORDINARY.get(i - 1).at());
      assertThat(apart).as(ORDINARY.get(i).text()).isGreaterThanOrEqualTo(Duration.ofSeconds(1));
    }
  }

  @Test
  void capOnlyIsSaidBeforeEveryPourUntilTheFilmIsFixed() {
    assertThat(ORDINARY.stream().filter(cue -> cue.act() == Act.CAP_ONLY).map(Cue::step))
        .containsExactly(0, 1, 2);
    Cue lid = only(3, Act.LID_OFF);
    assertThat(lid.at()).isBetween(only(2, Act.DRAIN).at(), only(3, Act.POUR).at());
  }

  @Test
  void whatGoesWhereIsSaid() {
    assertThat(only(2, Act.RETURN).text()).isEqualTo("Fixer back to bottle F");
    assertThat(only(0, Act.RETURN).text()).isEqualTo("Discard the developer");
    assertThat(only(1, Act.NEXT_BATH).text()).isEqualTo("Next: stop bath, bottle S");
    assertThat(only(0, Act.GET_READY).at()).isEqualTo(Duration.ofSeconds(-30));
    assertThat(ORDINARY.get(ORDINARY.size() - 1).act()).isEqualTo(Act.HANG);
  }

  @Test
  void everyKindOfActIsSaidSomewhereInAnOrdinaryRun() {
    EnumSet<Act> said = EnumSet.noneOf(Act.class);
    ORDINARY.forEach(cue -> said.add(cue.act()));
    assertThat(said).containsAll(EnumSet.complementOf(EnumSet.of(Act.LIGHT_ON)));
  }

  @Test
  void tanksAreToldApartByNameInEveryCue() {
    assertThat(CueSheet.along(Timeline.of(SomeSteps.ordinary()).steps(), "Double"))
        .allMatch(cue -> cue.text().startsWith("Double: ") && cue.saying().tank().equals("Double"));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void everyProcessKeepsTheRules(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int n = 0; n < 60; n++) {
      Timeline timeline = Timeline.of(SomeSteps.random(random));
      List<Cue> cues = CueSheet.along(timeline.steps(), "");
      assertThat(cues.stream().map(Cue::id)).doesNotHaveDuplicates();
      assertThat(cues).isSortedAccordingTo(java.util.Comparator.comparing(Cue::at));
      assertThat(cues).allSatisfy(CueSheetTest::hasAllFour);
      for (Cue cue : cues) {
        PlacedStep step = timeline.steps().get(cue.step());
        assertThat(cue.at()).isEqualTo(step.full().plus(cue.inStep()));
        if (cue.act() == Act.AGITATE) {
          assertThat(cue.at().plus(cue.length()))
              .as("no cycle runs into the drain")
              .isLessThanOrEqualTo(step.drain());
        }
      }
      timeline.steps().forEach(step -> boutsDoNotOverlap(step));
    }
  }

  @Test
  void theHandsAreCountedInWhereThereIsRoomForIt() {
    assertThat(only(0, Act.DRAIN).countIn()).isEqualTo(3);
    assertThat(only(1, Act.POUR).countIn()).as("3.75 s after \"cap only\"").isEqualTo(2);
    assertThat(only(0, Act.RETURN).countIn()).as("nothing hangs on its second").isZero();
  }

  private static void hasAllFour(Cue cue) {
    assertThat(cue.text()).isNotBlank();
    assertThat(cue.saying().sentence()).isNotBlank();
    assertThat(cue.tone().milliseconds()).isPositive();
    assertThat(cue.signal().milliseconds()).isGreaterThanOrEqualTo(1000);
    assertThat(cue.signal().vibrateMilliseconds()).isNotEmpty();
  }

  private static void boutsDoNotOverlap(PlacedStep step) {
    List<Bout> bouts = Bouts.of(step.step().agitation(), step.drain().minus(step.full()));
    for (int i = 1; i < bouts.size(); i++) {
      assertThat(bouts.get(i).inStep()).isGreaterThanOrEqualTo(bouts.get(i - 1).end());
    }
  }
}
