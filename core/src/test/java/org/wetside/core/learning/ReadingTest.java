package org.wetside.core.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.ExposureIndex;

/** What one judged roll says. All figures are invented, and so are the worths of words. */
class ReadingTest {
  private static final ContrastBasis BASIS = new ContrastBasis("a series", 0.60, 0.5);
  private static final LearningRules RULES = rules();

  private static LearningRules rules() {
    Map<ContrastWord, LearningRules.Worth> contrast = new EnumMap<>(ContrastWord.class);
    double ln = 0.14;
    for (ContrastWord word : ContrastWord.values()) {
      contrast.put(word, new LearningRules.Worth(ln, 0.15));
      ln -= 0.07;
    }
    Map<ShadowWord, LearningRules.Worth> shadows = new EnumMap<>(ShadowWord.class);
    double stops = -1;
    for (ShadowWord word : ShadowWord.values()) {
      shadows.put(word, new LearningRules.Worth(stops, 0.5));
      stops += 0.5;
    }
    // net density rises by 0.1 for each 0.301 of log exposure: a tenth for each stop
    List<ToeShape.Point> straight =
        List.of(new ToeShape.Point(0, 0), new ToeShape.Point(5 * ReferencePair.LOG_PER_STOP, 0.5));
    return new LearningRules(
        Users.SCATTER,
        new Scatter(0.33, 0.5, 0.17),
        contrast,
        shadows,
        0.02,
        ToeShape.mean(List.of(straight)));
  }

  private static Judgement roll(int exposed, Seen seen, Developed developed) {
    return new Judgement(
        1,
        "A-1",
        new FilmInDeveloper("A", "soup"),
        "Film A",
        Optional.of(ExposureIndex.of(exposed)),
        Instant.EPOCH,
        seen,
        developed,
        new Used("", "", ""));
  }

  private static Developed developed(int seconds, Optional<ContrastBasis> basis) {
    return new Developed(
        Instant.EPOCH,
        Optional.of(Duration.ofSeconds(seconds)),
        Optional.of(Duration.ofSeconds(600)),
        "a leaflet",
        basis,
        basis.isPresent() ? "" : "no series is on file");
  }

  private static Seen words(EdgePrint edge, ShadowWord shadows, ContrastWord contrast) {
    return new Seen(edge, Optional.of(shadows), Optional.of(contrast), Optional.empty());
  }

  private static Seen pair(Optional<Double> base, double shadow, double light) {
    return new Seen(
        EdgePrint.NONE,
        Optional.empty(),
        Optional.empty(),
        Optional.of(new ReferencePair(base, shadow, light)));
  }

  @Test
  void aWordIsWorthWhatItSays() {
    RollSeen said =
        Reading.ofFactor(
                roll(
                    400,
                    words(EdgePrint.USUAL, ShadowWord.GOOD, ContrastWord.RATHER_FLAT),
                    developed(600, Optional.empty())),
                RULES)
            .says()
            .orElseThrow();

    assertThat(said.value()).isCloseTo(0.07, within(1e-12));
    assertThat(said.sd()).isEqualTo(0.15);
  }

  /** A roll that was given its factor already and came out right says that factor. */
  @Test
  void whatWasGivenAlreadyBelongsToTheFactor() {
    RollSeen said =
        Reading.ofFactor(
                roll(
                    400,
                    words(EdgePrint.USUAL, ShadowWord.GOOD, ContrastWord.RIGHT),
                    developed(660, Optional.empty())),
                RULES)
            .says()
            .orElseThrow();

    assertThat(Math.exp(said.value())).isCloseTo(1.10, within(1e-12));
  }

  /** Contrast 0.54 where 0.60 was expected, slope 0.5: ln(0.9) / 0.5 in ln(time) is missing. */
  @Test
  void thePairIsHeldAgainstTheSeries() {
    double light = 0.20 + 0.54 * 6 * Math.log10(2);
    Judgement roll =
        roll(400, pair(Optional.of(0.10), 0.20, light), developed(600, Optional.of(BASIS)));
    RollSeen said = Reading.ofFactor(roll, RULES).says().orElseThrow();

    assertThat(said.value()).isCloseTo(-Math.log(0.9) / 0.5, within(1e-9));
    assertThat(said.sd()).isCloseTo(Math.sqrt(2) * 0.02 / (light - 0.20) / 0.5, within(1e-9));
    // the dark frame has 0.10 above clear film: the film has the index it was exposed at
    assertThat(Reading.ofIndex(roll, RULES).says().orElseThrow().value())
        .isCloseTo(0, within(1e-9));
  }

  @Test
  void aDarkFrameThatIsTooThinSaysHowFarTheIndexIsOff() {
    Judgement roll =
        roll(400, pair(Optional.of(0.10), 0.15, 1.2), developed(600, Optional.of(BASIS)));

    assertThat(Reading.ofIndex(roll, RULES).says().orElseThrow().value())
        .isCloseTo(-0.5, within(1e-9));
    assertThat(
            Reading.ofIndex(roll(400, pair(Optional.of(0.1), 0.11, 1.2), roll.developed()), RULES))
        .satisfies(none -> assertThat(none.says()).isEmpty())
        .satisfies(none -> assertThat(none.words()).contains("outside 0.04 to 0.30"));
  }

  @Test
  void withoutASeriesThePairSaysWhyAndTheWordCounts() {
    Judgement bare = roll(400, pair(Optional.empty(), 0.2, 1.2), developed(600, Optional.empty()));
    assertThat(Reading.ofFactor(bare, RULES).says()).isEmpty();
    assertThat(Reading.ofFactor(bare, RULES).words()).contains("no series is on file");
    assertThat(Reading.ofIndex(bare, RULES).words()).contains("base plus fog was not read");

    Seen both =
        new Seen(
            EdgePrint.USUAL, Optional.empty(), Optional.of(ContrastWord.HARD), bare.seen().pair());
    Reading word = Reading.ofFactor(roll(400, both, bare.developed()), RULES);
    assertThat(word.says().orElseThrow().value()).isCloseTo(-0.14, within(1e-12));
    assertThat(word.words()).contains("hard", "no series is on file");
  }

  /** Never shadows alone: a thin edge print says that development was short. */
  @Test
  void shadowsSpeakOfTheIndexOnlyBesideAUsualEdgePrint() {
    Developed developed = developed(600, Optional.empty());
    Seen thin = words(EdgePrint.THIN, ShadowWord.EMPTY, ContrastWord.FLAT);
    assertThat(Reading.ofIndex(roll(400, thin, developed), RULES).says()).isEmpty();
    assertThat(Reading.ofIndex(roll(400, thin, developed), RULES).words())
        .contains("thinner than usual");
    Seen usual = words(EdgePrint.USUAL, ShadowWord.EMPTY, ContrastWord.RIGHT);
    assertThat(Reading.ofIndex(roll(400, usual, developed), RULES).says().orElseThrow().value())
        .isEqualTo(-1);
  }

  @Test
  void rollsOfSeveralIndexesAreCountedFromTheFirst() {
    Developed developed = developed(600, Optional.empty());
    Seen good = words(EdgePrint.USUAL, ShadowWord.GOOD, ContrastWord.RIGHT);
    Seen weak = words(EdgePrint.USUAL, ShadowWord.WEAK, ContrastWord.RIGHT);
    Lesson lesson =
        Lessons.from(
                List.of(
                    roll(400, weak, developed),
                    roll(200, good, developed),
                    roll(1600, good, developed)),
                RULES)
            .lessons()
            .get(0);

    OwnIndex index = lesson.index().orElseThrow();
    assertThat(index.exposed()).isEqualTo(ExposureIndex.of(400));
    assertThat(index.belief().rolls()).isEqualTo(2);
    assertThat(index.middle().isoArithmetic()).isBetween(200.0, 400.0);
    assertThat(index.low().isoArithmetic()).isLessThan(index.middle().isoArithmetic());
    assertThat(lesson.rolls().get(2).index().words()).contains("more than a stop");
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThatThrownBy(() -> new ReferencePair(Optional.empty(), 1.2, 0.3))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("are they exchanged?");
    assertThatThrownBy(() -> new ReferencePair(Optional.of(0.5), 0.3, 1.2))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("base plus fog");
    assertThatThrownBy(() -> new ReferencePair(Optional.empty(), -0.1, 1.2))
        .hasMessageContaining("between 0 and 5");
    assertThatThrownBy(
            () -> new Seen(EdgePrint.USUAL, Optional.empty(), Optional.empty(), Optional.empty()))
        .hasMessageContaining("say how shadows or contrast look");
    assertThatThrownBy(() -> ContrastWord.parse("mushy")).hasMessageContaining("a little flat");
  }

  @Test
  void whatChangedIsSaidOnlyWhereBothAreKnown() {
    Used first = new Used("tap", "glass rod", "D, mixed 2026-01-01");
    Used second = new Used("", "Glass Rod", "D, mixed 2026-02-01");

    assertThat(second.changedSince(first)).containsExactly("bottle: D, mixed 2026-02-01");
    assertThat(new Used("well", "", "").changedSince(second.after(first)))
        .containsExactly("water: well");
  }
}
