package org.wetside.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetside.core.development.BasisStep;
import org.wetside.core.development.ContrastSeries;
import org.wetside.core.development.FilmCatalogue;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Refusal;
import org.wetside.core.development.TimeAnswer;
import org.wetside.core.development.TimeEntry;
import org.wetside.core.development.TimeEstimator;
import org.wetside.core.development.TimeLibrary;
import org.wetside.core.development.TimeQuestion;
import org.wetside.core.development.TimeWarning;
import org.wetside.core.development.Vessel;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TimeSpan;
import org.wetside.core.source.Standing;

/** The estimator against rows as printed and against figures that others computed from them. */
class PublishedTimesTest {
  private static final TimeLibrary LIBRARY = DevelopmentTimes.library();
  private static final TimeEstimator ESTIMATOR = new TimeEstimator(LIBRARY);
  private static final FilmCatalogue FILMS = DevelopmentTimes.films();

  static TimeAnswer ask(
      String film, String developer, String dilution, double index, String at, Vessel vessel) {
    return ESTIMATOR.answer(
        TimeQuestion.of(
            FILMS.byCode(film).orElseThrow(),
            FilmFormat.ANY,
            DevelopmentTimes.developers().require(developer),
            Dilution.parse(dilution),
            ExposureIndex.of(index),
            Temperature.parse(at),
            vessel));
  }

  private static TimeAnswer.Estimate estimate(
      String film, String developer, String dilution, double index, String at, Vessel vessel) {
    return (TimeAnswer.Estimate) ask(film, developer, dilution, index, at, vessel);
  }

  static List<TimeEntry> answerable() {
    return LIBRARY.published().entries();
  }

  /** An entry printed at the asked conditions is always answered, with itself. */
  @ParameterizedTest
  @MethodSource("answerable")
  void everySuggestedRowAnswersItsOwnConditions(TimeEntry entry) {
    TimeAnswer answer =
        ESTIMATOR.answer(
            TimeQuestion.of(
                FILMS.byCode(entry.filmCode()).orElseThrow(),
                entry.format(),
                DevelopmentTimes.developers().require(entry.developer()),
                entry.dilution(),
                entry.exposureIndex().orElseThrow(),
                entry.temperature().orElseThrow(),
                entry.vessel()));
    assertThat(answer).as(entry.id()).isInstanceOf(TimeAnswer.Estimate.class);
    TimeAnswer.Estimate estimate = (TimeAnswer.Estimate) answer;
    assertThat(estimate.standing()).as(entry.id()).isEqualTo(Standing.PUBLISHED);
    assertThat(estimate.basis()).as(entry.id()).hasSize(1);
    assertThat(estimate.time()).as(entry.id()).isEqualTo(entry.time());
  }

  /** Row D062, F-32 rotary table (source DV-S01). */
  @Test
  void answersARotaryTimeOfAFormerCoatingAndSaysSo() {
    TimeAnswer.Estimate answer = estimate("TMY", "d76", "stock", 400, "68F", Vessel.ROTARY);
    assertThat(answer.time()).isEqualTo(Duration.ofMinutes(7));
    assertThat(answer.basis()).hasSize(1);
    assertThat(answer.basis().get(0).citation().sourceId()).isEqualTo("DV-S01");
    assertThat(answer.warnings()).hasAtLeastOneElementOfType(TimeWarning.FormerCoating.class);
    assertThat(answer.benchBand().low()).isLessThan(answer.band().low());
    assertThat(answer.benchBand().high()).isGreaterThan(answer.band().high());
  }

  /** Between rows D063 (6.5 min at 70 °F) and D064 (6 min at 72 °F): √(390 × 360) = 374.7 s. */
  @Test
  void readsBetweenTwoPrintedTemperatures() {
    TimeAnswer.Estimate answer = estimate("TMY", "D-76", "stock", 400, "71F", Vessel.ROTARY);
    assertThat(TimeSpan.toSeconds(answer.time())).isCloseTo(374.7, within(0.05));
    assertThat(answer.basis()).hasSize(2);
    BasisStep step = answer.basis().get(1);
    assertThat(step.kind()).isEqualTo(BasisStep.Kind.TEMPERATURE);
    assertThat(step.printedTemperatures()).containsExactly("70 °F", "72 °F");
    assertThat(answer.standing()).isEqualTo(Standing.COMPUTED);
  }

  /**
   * K02 and K03: the temperature law of D-76 through its time at 68 °F against the printed rows
   * D058 to D065, F-32 rotary (source DV-S01), 0.15 min.
   */
  @ParameterizedTest
  @CsvSource({
    "TMY, 400, 7.0, 1.87, 70", "TMY, 400, 7.0, 1.87, 72", "TMY, 400, 7.0, 1.87, 75",
    "TMX, 100, 6.5, 1.97, 70", "TMX, 100, 6.5, 1.97, 72", "TMX, 100, 6.5, 1.97, 75"
  })
  void printedRowsFollowTheTemperatureLaw(
      String film, double index, double at68, double q10, double fahrenheit) {
    TimeAnswer.Estimate answer =
        estimate(film, "D-76", "stock", index, fahrenheit + "F", Vessel.ROTARY);
    double law = at68 * Math.pow(q10, -(fahrenheit - 68) / 18);
    assertThat(TimeSpan.toSeconds(answer.time()) / 60).isCloseTo(law, within(0.15));
  }

  /** K10: TXP in HC-110 B, large and small tank at 68 °F: 6.25 / 5.5 = 1.136 (source DV-S03). */
  @Test
  void evidenceHoldsThePrintedTankPair() {
    double large = minutes("TXP", Vessel.LARGE_TANK, "DV-T01", 20);
    double small = minutes("TXP", Vessel.SMALL_TANK, "DV-T01", 20);
    assertThat(large / small).isCloseTo(1.136, within(0.001));
  }

  /** K11: TRI-X Pan pushed two stops in D-76, 9 to 13 min: ratio 1.444 (rows D083, D084). */
  @Test
  void evidenceHoldsThePrintedPush() {
    List<TimeEntry> rows =
        LIBRARY.evidence().entries().stream()
            .filter(entry -> entry.id().equals("D083") || entry.id().equals("D084"))
            .toList();
    assertThat(rows).hasSize(2);
    double ratio = TimeSpan.toSeconds(rows.get(1).time()) / TimeSpan.toSeconds(rows.get(0).time());
    assertThat(ratio).isCloseTo(1.444, within(0.001));
    assertThat(Math.sqrt(ratio)).isCloseTo(1.202, within(0.001));
  }

  /** K05: the curve of TRI-X Pan in D-76 reads 0.5625 at 9 min, printed 0.56 (source DV-S21). */
  @Test
  void contrastCurveReadsWhatTheTextPrints() {
    ContrastSeries series = curve("CI01");
    assertThat(series.curve().contrastAt(540).orElseThrow()).isCloseTo(0.56, within(0.01));
  }

  /** K09: TXP in HC-110 B at 6.25 min reads 0.563, printed aim 0.56 (source DV-S21). */
  @Test
  void contrastCurveOfTheProfessionalFilmReadsItsAim() {
    assertThat(curve("CI03").curve().contrastAt(375).orElseThrow()).isCloseTo(0.563, within(0.01));
  }

  private static ContrastSeries curve(String id) {
    return DevelopmentTimes.contrast().stream()
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static double minutes(String film, Vessel vessel, String source, double celsius) {
    return LIBRARY.evidence().entries().stream()
        .filter(entry -> entry.filmCode().equals(film) && entry.vessel() == vessel)
        .filter(entry -> entry.citation().sourceId().equals(source))
        .filter(entry -> Math.abs(entry.temperature().orElseThrow().celsius() - celsius) < 0.01)
        .mapToDouble(entry -> TimeSpan.toSeconds(entry.time()) / 60)
        .findFirst()
        .orElseThrow();
  }

  /** Row E096, F-4017 push table (source DV-T02): 9.5 min. */
  @Test
  void answersAPrintedPush() {
    TimeAnswer.Estimate answer = estimate("400TX", "D-76", "stock", 1600, "20C", Vessel.SMALL_TANK);
    assertThat(answer.time()).isEqualTo(Duration.ofSeconds(570));
    assertThat(answer.standing()).isEqualTo(Standing.PUBLISHED);
  }

  /** Between rows E017 (6.75 min at EI 400) and E096 (9.5 min at EI 1600): √(405 × 570) s. */
  @Test
  void readsOneStopBetweenTwoPrintedIndexes() {
    TimeAnswer.Estimate answer = estimate("400TX", "D-76", "stock", 800, "20C", Vessel.SMALL_TANK);
    assertThat(TimeSpan.toSeconds(answer.time())).isCloseTo(Math.sqrt(405.0 * 570.0), within(0.05));
    assertThat(answer.basis().get(1).description()).contains("EI 400", "EI 1600");
  }

  @Test
  void refusesThirtyDegreesWithTheLimitAndAClipTest() {
    TimeAnswer.NoHonestTime none =
        (TimeAnswer.NoHonestTime) ask("TMY", "D-76", "stock", 400, "30C", Vessel.ROTARY);
    assertThat(none.reasons().get(0)).isInstanceOf(Refusal.OutsideTemperatures.class);
    assertThat(none.nearest()).isNotEmpty();
    assertThat(none.plan().times()).hasSizeGreaterThanOrEqualTo(3).isSorted();
    assertThat(none.plan().frames()).isEqualTo(none.plan().clips() * 3);
  }

  /** Row E489: P3200 in T-MAX at 85 °F (29.4 °C), printed beyond 24 °C and so answered. */
  @Test
  void answersWarmBathsThatAreInsideASeries() {
    assertThat(ask("P3200TMZ", "T-MAX", "1+4", 1600, "29C", Vessel.SMALL_TANK))
        .isInstanceOf(TimeAnswer.Estimate.class);
    assertThat(ask("P3200TMZ", "T-MAX", "1+4", 1600, "31C", Vessel.SMALL_TANK))
        .isInstanceOf(TimeAnswer.NoHonestTime.class);
  }

  @Test
  void refusesMoreThanTwoGuessedStops() {
    TimeAnswer.NoHonestTime none =
        (TimeAnswer.NoHonestTime) ask("TMY", "D-76", "stock", 3200, "68F", Vessel.ROTARY);
    assertThat(none.reasons().get(0)).isInstanceOf(Refusal.TooFarToGuess.class);
  }

  @Test
  void refusesAStandTimeFromOrdinaryEntriesAndAFilmWithoutEntries() {
    TimeAnswer none = ask("TMY-2", "D-76", "stock", 400, "68F", Vessel.SMALL_TANK);
    assertThat(((TimeAnswer.NoHonestTime) none).reasons().get(0))
        .isInstanceOf(Refusal.NoEntries.class);
  }

  /** Rows D031 and D039: XTOL 68 °F, 5.5 min for 135 and 5.25 min for 120 (source DV-S01). */
  @Test
  void showsBothTimesWhereTheFormatMattersAndNeverAveragesThem() {
    TimeAnswer.Estimate answer = estimate("TMY", "XTOL", "stock", 400, "68F", Vessel.ROTARY);
    TimeWarning.FormatMatters both =
        answer.warnings().stream()
            .filter(TimeWarning.FormatMatters.class::isInstance)
            .map(TimeWarning.FormatMatters.class::cast)
            .findFirst()
            .orElseThrow();
    assertThat(both.byFormat())
        .extracting(candidate -> candidate.time().toSeconds())
        .containsExactlyInAnyOrder(330L, 315L);
  }

  @Test
  void saysThatAMakerCallsARaisedIndexNormalAndShowsTheLongerTime() {
    TimeAnswer.Estimate answer = estimate("TMY", "D-76", "stock", 800, "68F", Vessel.ROTARY);
    assertThat(answer.time()).isEqualTo(Duration.ofMinutes(7));
    assertThat(answer.warnings()).hasAtLeastOneElementOfType(TimeWarning.LongerForContrast.class);
  }

  /** Row E015: 2.5 min at 75 °F in a hand-inverted tank. */
  @Test
  void warnsUnderFiveMinutesInATankTurnedByHand() {
    TimeAnswer.Estimate answer = estimate("400TX", "HC-110", "B", 400, "75F", Vessel.SMALL_TANK);
    assertThat(answer.time()).isEqualTo(Duration.ofSeconds(150));
    assertThat(answer.warnings()).hasAtLeastOneElementOfType(TimeWarning.ShortInHandTank.class);
  }

  /** Every cell of a list is plausible: the walk over all files sees only whole cells. */
  @Test
  void everyListedTemperatureAndTimeIsPlausible() {
    assertThat(LIBRARY.published().entries()).hasSizeGreaterThan(500);
    for (List<TimeEntry> entries :
        List.of(LIBRARY.published().entries(), LIBRARY.evidence().entries())) {
      for (TimeEntry entry : entries) {
        assertThat(entry.temperature().orElseThrow().celsius())
            .as(entry.id())
            .isBetween(17.9, 29.5);
        assertThat(TimeSpan.toSeconds(entry.time())).as(entry.id()).isBetween(120.0, 1800.0);
        assertThat(FILMS.byCode(entry.filmCode())).as(entry.id()).isPresent();
        assertThat(DevelopmentTimes.developers().find(entry.developer()))
            .as(entry.id())
            .isPresent();
      }
    }
  }

  /** The slopes that were computed independently from the same rows: file computed_slopes. */
  @Test
  void slopesAgreeWithThoseComputedElsewhere() {
    int compared = 0;
    for (CsvText.Line row : CsvText.read("development/computed_slopes").lines()) {
      if (row.cell("film").equals("KODAK TRI-X 400") && row.cell("temperatures").contains("68F")) {
        Vessel vessel = Vessel.parse(row.cell("vessel"));
        String dilution = row.cell("dilution").replace("1:", "1+");
        double index = Double.parseDouble(row.cell("ei"));
        double cold =
            TimeSpan.toSeconds(
                estimate("400TX", row.cell("developer"), dilution, index, "68F", vessel).time());
        double warm =
            TimeSpan.toSeconds(
                estimate("400TX", row.cell("developer"), dilution, index, "75F", vessel).time());
        double perKelvin = 100 * Math.log(cold / warm) / (7 / 1.8);
        assertThat(perKelvin)
            .as(row.cell("id"))
            .isCloseTo(Double.parseDouble(row.cell("percent_per_k")), within(1.8));
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(20);
  }

  /** K04: PLUS-X long rolls in HC-110 B, 6 min at 68 °F and 4.25 at 75 °F (source DV-S04). */
  @Test
  void twoPrintedTemperaturesGiveTheTemperatureCoefficient() {
    List<TimeEntry> rows =
        PrintedTimes.read("development/transcribed_times").stream()
            .filter(entry -> entry.id().equals("D092") || entry.id().equals("D093"))
            .toList();
    assertThat(rows).hasSize(2);
    double ratio = TimeSpan.toSeconds(rows.get(0).time()) / TimeSpan.toSeconds(rows.get(1).time());
    double kelvins =
        rows.get(1)
            .temperature()
            .orElseThrow()
            .minus(rows.get(0).temperature().orElseThrow())
            .kelvins();
    assertThat(Math.pow(ratio, 10 / kelvins)).isCloseTo(2.427, within(0.005));
  }

  /** Every ratio that was computed independently from two rows: file computed_ratios. */
  @Test
  void ratiosAgreeWithThoseComputedElsewhere() {
    Map<String, TimeEntry> byId = new HashMap<>();
    LIBRARY.published().entries().forEach(entry -> byId.putIfAbsent(entry.id(), entry));
    LIBRARY.evidence().entries().forEach(entry -> byId.putIfAbsent(entry.id(), entry));
    List<CsvText.Line> rows = CsvText.read("development/computed_ratios").lines();
    assertThat(rows).hasSizeGreaterThan(100);
    for (CsvText.Line row : rows) {
      String[] ids = row.cell("rows").split("/", -1);
      TimeEntry above = Objects.requireNonNull(byId.get(ids[0]), ids[0]);
      TimeEntry below = Objects.requireNonNull(byId.get(ids[1]), ids[1]);
      assertThat(TimeSpan.toSeconds(above.time()) / TimeSpan.toSeconds(below.time()))
          .as(row.cell("id"))
          .isCloseTo(Double.parseDouble(row.cell("ratio")), within(0.006));
      assertThat(above.filmCode()).isEqualTo(below.filmCode()).isEqualTo(row.cell("film"));
    }
  }

  @Test
  void everyPointOfEveryContrastCurveIsPlausible() {
    assertThat(DevelopmentTimes.contrast()).hasSizeGreaterThan(20);
    for (ContrastSeries series : DevelopmentTimes.contrast()) {
      assertThat(series.points())
          .as(series.id())
          .hasSizeGreaterThan(1)
          .allSatisfy(
              point -> {
                assertThat(point.seconds()).isBetween(180.0, 1800.0);
                assertThat(point.contrast()).isBetween(0.3, 2.1);
                assertThat(point.sd()).isBetween(0.001, 0.06);
              });
    }
  }

  /** A wish reaches beyond 24 °C as far as any table goes, and no further. */
  @Test
  void anExplicitWishReachesAsFarAsAnyTable() {
    assertThat(wished("25C")).isInstanceOf(TimeAnswer.Estimate.class);
    assertThat(wished("35C")).isInstanceOf(TimeAnswer.NoHonestTime.class);
    assertThat(ask("TMY", "D-76", "stock", 400, "25C", Vessel.ROTARY))
        .isInstanceOf(TimeAnswer.NoHonestTime.class);
  }

  private static TimeAnswer wished(String temperature) {
    TimeAnswer.Estimate printed = estimate("TMY", "D-76", "stock", 400, "68F", Vessel.ROTARY);
    TimeQuestion asked = printed.question();
    return ESTIMATOR.answer(
        new TimeQuestion(
            asked.film(),
            asked.format(),
            asked.developer(),
            asked.dilution(),
            asked.exposureIndex(),
            Temperature.parse(temperature),
            asked.vessel(),
            asked.agitation(),
            asked.aimContrast(),
            asked.thermometerUncertainty(),
            true));
  }
}
