package org.wetside.app.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.CannotDoException;
import org.wetside.app.Wetside;
import org.wetside.app.demo.FillDemo;
import org.wetside.app.home.Home;
import org.wetside.app.plan.LoadWish;
import org.wetside.app.plan.PreparedLoad;
import org.wetside.app.times.TimeRequest;
import org.wetside.app.times.TimeWords;
import org.wetside.core.development.BasisStep;
import org.wetside.core.development.TimeAnswer;
import org.wetside.core.learning.ContrastWord;
import org.wetside.core.learning.EdgePrint;
import org.wetside.core.learning.Lesson;
import org.wetside.core.learning.OwnIndex;
import org.wetside.core.learning.ReferencePair;
import org.wetside.core.learning.Seen;
import org.wetside.core.learning.ShadowWord;
import org.wetside.core.learning.Used;
import org.wetside.core.plan.Recipe;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.source.Standing;

/**
 * From negatives to the next time, on the rolls of the invented evenings: TM-01 and TM-02 are TRI-X
 * 400 in D-76 1+1, TM-03 is T-MAX 100 in D-76.
 */
class LearningTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-01-14T20:14:00Z"), ZoneOffset.UTC);

  private Wetside wetside;
  private Learning learning;

  @BeforeEach
  void open(@TempDir Path home) {
    wetside = FillDemo.into(new Home(home), CLOCK);
    learning = wetside.learning();
    for (String judged : new String[] {"TM-01", "TM-02"}) {
      assertThat(learning.judgeRoll().takeBack(judged).time().says()).isPresent();
    }
  }

  @AfterEach
  void close() {
    wetside.close();
  }

  private static Seen words(ContrastWord contrast) {
    return new Seen(
        EdgePrint.USUAL, Optional.of(ShadowWord.WEAK), Optional.of(contrast), Optional.empty());
  }

  private TimeAnswer.Estimate time(String film, String dilution, String ei) {
    return (TimeAnswer.Estimate)
        wetside
            .askTime()
            .answer(
                new TimeRequest(film, "D-76", dilution, ei, "20C", "small", "135", "", "", false));
  }

  @Test
  void aWordSaysWhatTheRollWasGivenAndWhatIsMissing() {
    Lesson.Told told =
        learning.judgeRoll().judge("TM-01", words(ContrastWord.RATHER_FLAT), Optional.empty());

    double given =
        Math.log(
            (double) told.roll().developed().lasted().orElseThrow().toMillis()
                / told.roll().developed().makers().orElseThrow().toMillis());
    assertThat(told.time().says().orElseThrow().value()).isCloseTo(given + 0.07, within(1e-9));
    // readings of 19.9 and 19.6 °C: the dose decided, within some seconds of what is printed
    assertThat(given).isCloseTo(0, within(0.02));
    assertThat(told.index().says().orElseThrow().value()).isEqualTo(-0.5);
    assertThat(told.roll().used().thermometer()).isEqualTo("glass rod");
    assertThat(told.roll().used().batch()).startsWith("D");
  }

  @Test
  void nothingIsUsedBeforeItIsAccepted() {
    TimeAnswer.Estimate before = time("TRI-X 400", "1+1", "400");
    learning.judgeRoll().judge("TM-01", words(ContrastWord.FLAT), Optional.empty());
    learning.judgeRoll().judge("TM-02", words(ContrastWord.FLAT), Optional.empty());

    assertThat(time("TRI-X 400", "1+1", "400").time()).isEqualTo(before.time());
    assertThat(learning.seeLearned().now().beside(before.question()).orElseThrow())
        .matches("yours: \\+\\d+ % ± \\d+ % from 2 rolls; use it\\?");
  }

  @Test
  void anAcceptedFactorIsAStepOfItsOwnAndNarrowsTheBench() {
    TimeAnswer.Estimate before = time("TRI-X 400", "1+1", "400");
    learning.judgeRoll().judge("TM-01", words(ContrastWord.FLAT), Optional.empty());
    learning.judgeRoll().judge("TM-02", words(ContrastWord.FLAT), Optional.empty());
    var factor = learning.acceptFactor().accept("TRI-X 400", "D-76");
    TimeAnswer.Estimate after = time("TRI-X 400", "1+1", "400");

    BasisStep step = after.basis().get(after.basis().size() - 1);
    assertThat(step.kind()).isEqualTo(BasisStep.Kind.OWN_FACTOR);
    assertThat(step.factor()).isCloseTo(Math.exp(factor.lnFactor()), within(1e-9));
    assertThat(step.lnSd()).isEqualTo(factor.lnSd());
    assertThat(step.description()).contains("2 rolls");
    assertThat(TimeSpan.toSeconds(after.time()))
        .isCloseTo(TimeSpan.toSeconds(before.time()) * step.factor(), within(0.06));
    assertThat(after.standing()).isEqualTo(Standing.COMPUTED);
    assertThat(after.headline().lnSd())
        .isCloseTo(Math.hypot(before.headline().lnSd(), factor.lnSd()), within(1e-9));
    // the two terms of an unknown bench are gone, the factor's own has come
    double gone = before.benchLnSd() * before.benchLnSd() - 0.08 * 0.08 - 0.10 * 0.10;
    assertThat(after.benchLnSd())
        .isCloseTo(Math.sqrt(gone + factor.lnSd() * factor.lnSd()), within(1e-9))
        .isLessThan(before.benchLnSd());
    // another film is not touched
    assertThat(time("T-MAX 100", "stock", "100").basis())
        .noneMatch(one -> one.kind() == BasisStep.Kind.OWN_FACTOR);

    learning.acceptFactor().takeBack("TRI-X 400", "D-76");
    assertThat(time("TRI-X 400", "1+1", "400").time()).isEqualTo(before.time());
    assertThatThrownBy(() -> learning.acceptFactor().takeBack("TRI-X 400", "D-76"))
        .isInstanceOf(CannotDoException.class)
        .hasMessageContaining("nothing was taken back");
  }

  /** Shadows were weak at 400: the index is half a stop below, in part believed. */
  @Test
  void anIndexIsAcceptedApartFromTheFactor() {
    TimeAnswer.Estimate before = time("TRI-X 400", "1+1", "400");
    learning.judgeRoll().judge("TM-01", words(ContrastWord.FLAT), Optional.empty());
    learning.judgeRoll().judge("TM-02", words(ContrastWord.FLAT), Optional.empty());
    assertThat(learning.seeLearned().indexesInUse(Optional.empty())).isEmpty();
    assertThat(learning.seeLearned().now().indexBeside(before.question()).orElseThrow())
        .matches(
            "your index: \\d+ \\(\\d+ to \\d+\\) where you exposed at 400, from 2 rolls; use it\\?");

    OwnIndex own = learning.acceptIndex().accept("TRI-X 400", "D-76");

    assertThat(own.middle().isoArithmetic()).isBetween(280.0, 399.0);
    assertThat(learning.seeLearned().now().inUse()).isEmpty();
    assertThat(learning.seeLearned().indexesInUse(Optional.of("400TX")))
        .isEqualTo(Math.round(own.middle().isoArithmetic()) + " for 400TX in D-76");
    TimeAnswer.Estimate pushed = time("TRI-X 400", "1+1", "400");
    assertThat(pushed.time()).isEqualTo(before.time());
    assertThat(TimeWords.of(pushed.warnings().get(0)))
        .contains("exposed at 400", "stops less light than you need");
    TimeAnswer.Estimate atOwn =
        time("TRI-X 400", "1+1", String.valueOf(Math.round(own.middle().isoArithmetic())));
    assertThat(atOwn.time()).isEqualTo(before.time());
    assertThat(TimeWords.of(atOwn.warnings().get(0)))
        .contains("is developed like the EI 400 of the rolls it was learned from");

    learning.acceptIndex().takeBack("400TX", "d-76");
    assertThat(time("TRI-X 400", "1+1", "400").warnings()).isEqualTo(before.warnings());
    assertThatThrownBy(() -> learning.acceptIndex().takeBack("TRI-X 400", "D-76"))
        .isInstanceOf(CannotDoException.class)
        .hasMessageContaining("nothing was taken back");
  }

  /** The plan knows the index as soon as it is in use, and fills none in. */
  @Test
  void aPlanSaysWhatAnIndexInUseMeansForItsRolls() {
    var unused =
        wetside
            .addRolls()
            .lines("X-1 135 36 TRI-X 400 @400 \"weir\"\nX-2 135 36 TRI-X 400 \"no index\"");
    learning.judgeRoll().judge("TM-01", words(ContrastWord.RIGHT), Optional.empty());
    learning.judgeRoll().judge("TM-02", words(ContrastWord.RIGHT), Optional.empty());
    assertThat(planned("X-1").aboutIndex()).isEmpty();
    assertThat(planned("X-2").why()).endsWith("without it no time is honest.");

    OwnIndex own = learning.acceptIndex().accept("TRI-X 400", "D-76");

    assertThat(planned("X-1").aboutIndex()).contains("stops less light than you need");
    assertThat(planned("X-2").why())
        .endsWith("Your own of it in D-76 is " + Math.round(own.middle().isoArithmetic()) + ".");
  }

  private PreparedLoad.TimedRoll planned(String roll) {
    return wetside
        .makeLoad()
        .prepared(
            new LoadWish(
                List.of(roll),
                wetside.keepTanks().all().get(0).name(),
                "small-tank",
                new Recipe("D-76", Dilution.parse("1+1"), Temperature.ofCelsius(20)),
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                Optional.empty(),
                ""))
        .rolls()
        .get(0);
  }

  /** What is in use stays as it was accepted; the next roll is compared without it. */
  @Test
  void laterRollsAreOfferedAndDoNotSlipIn() {
    learning.judgeRoll().judge("TM-01", words(ContrastWord.FLAT), Optional.empty());
    learning.acceptFactor().accept("400TX", "d-76");
    TimeAnswer.Estimate used = time("TRI-X 400", "1+1", "400");
    Lesson.Told second =
        learning.judgeRoll().judge("TM-02", words(ContrastWord.HARD), Optional.empty());

    assertThat(second.roll().developed().makers())
        .isEqualTo(learning.judgeRoll().now("TM-01").orElseThrow().developed().makers());
    assertThat(time("TRI-X 400", "1+1", "400").time()).isEqualTo(used.time());
    assertThat(learning.seeLearned().now().beside(used.question()).orElseThrow())
        .contains("yours, in use: ", "from 1 roll;", "your rolls now say", "from 2 rolls");
  }

  /** T-MAX 100 in D-76 has a series: the pair gives a factor. */
  @Test
  void aPairIsHeldAgainstTheFilmsSeries() {
    Seen pair =
        new Seen(
            EdgePrint.NONE,
            Optional.empty(),
            Optional.empty(),
            Optional.of(new ReferencePair(Optional.of(0.28), 0.36, 1.40)));
    Lesson.Told told = learning.judgeRoll().judge("TM-03", pair, Optional.empty());

    var basis = told.roll().developed().contrast().orElseThrow();
    double given = told.roll().developed().lasted().orElseThrow().toMillis();
    double makers = told.roll().developed().makers().orElseThrow().toMillis();
    double contrast = (1.40 - 0.36) / (6 * Math.log10(2));
    assertThat(told.time().says().orElseThrow().value())
        .isCloseTo(
            Math.log(given / makers) - Math.log(contrast / basis.expected()) / basis.slope(),
            within(1e-9));
    assertThat(told.time().says().orElseThrow().sd()).isBetween(0.01, 0.15);
    assertThat(told.time().words()).contains("reference pair", "contrast index");
    assertThat(told.index().says().orElseThrow().value()).isBetween(-1.0, 0.0);
  }

  @Test
  void withoutASeriesThePairSaysWhy() {
    Seen pair =
        new Seen(
            EdgePrint.NONE,
            Optional.empty(),
            Optional.empty(),
            Optional.of(new ReferencePair(Optional.of(0.28), 0.36, 1.40)));
    Lesson.Told told = learning.judgeRoll().judge("TM-01", pair, Optional.empty());

    assertThat(told.time().says()).isEmpty();
    assertThat(told.time().words()).contains("no series of contrast against time");
    assertThatThrownBy(() -> learning.acceptFactor().accept("TRI-X 400", "D-76"))
        .isInstanceOf(CannotDoException.class)
        .hasMessageContaining("no series");
  }

  @Test
  void aJudgementIsSaidAnewAndTakenBack() {
    learning.judgeRoll().judge("TM-01", words(ContrastWord.FLAT), Optional.empty());
    learning
        .judgeRoll()
        .judge("tm-01", words(ContrastWord.RIGHT), Optional.of(new Used("well", "", "")));

    assertThat(learning.seeLearned().now().lessons().lessons())
        .singleElement()
        .satisfies(lesson -> assertThat(lesson.rolls()).hasSize(1));
    assertThat(learning.judgeRoll().now("TM-01").orElseThrow().used().water()).isEqualTo("well");
    learning.judgeRoll().takeBack("TM-01");
    assertThat(learning.judgeRoll().now("TM-01")).isEmpty();
    assertThatThrownBy(() -> learning.judgeRoll().takeBack("TM-01"))
        .isInstanceOf(CannotDoException.class);
  }

  @Test
  void whatCannotBeJudgedSaysWhy() {
    assertThatThrownBy(
            () -> learning.judgeRoll().judge("TM-07", words(ContrastWord.FLAT), Optional.empty()))
        .isInstanceOf(CannotDoException.class)
        .hasMessageContaining("no negatives to judge yet");
    assertThatThrownBy(
            () -> learning.judgeRoll().judge("XX-1", words(ContrastWord.FLAT), Optional.empty()))
        .isInstanceOf(BadValueException.class);
    assertThatThrownBy(
            () ->
                learning
                    .judgeRoll()
                    .judge(
                        "TM-01",
                        words(ContrastWord.FLAT),
                        Optional.of(new Used("x".repeat(81), "", ""))))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("at most 80");
    assertThatThrownBy(() -> learning.acceptFactor().accept("TRI-X 400", "D-76"))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("no roll was judged yet");
  }
}
