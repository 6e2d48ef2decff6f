package org.wetside.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.wetside.core.quantity.LogExposure;
import org.wetside.core.quantity.OpticalDensity;
import org.wetside.core.sensitometry.CharacteristicCurve;
import org.wetside.core.sensitometry.ContrastCondition;
import org.wetside.core.sensitometry.CurveFamily;
import org.wetside.core.sensitometry.CurveReadings;
import org.wetside.core.sensitometry.CurveResults;
import org.wetside.core.sensitometry.DevelopedCurve;
import org.wetside.core.sensitometry.Measure;
import org.wetside.core.sensitometry.PrintAim;
import org.wetside.core.sensitometry.SpeedAtTime;
import org.wetside.core.sensitometry.StepReading;
import org.wetside.core.sensitometry.TimeForN;

/** Curves that makers printed, digitised: base plus fog is the first reading of each. */
class PublishedCurvesTest {
  private static final long SEED = 1;

  private static CurveResults read(List<StepReading> readings, double baseFog) {
    return CharacteristicCurve.through(
            new CurveReadings(readings, Optional.of(OpticalDensity.of(baseFog)), 0.0001, true))
        .results(StandardSpeeds.open(), SEED);
  }

  /** TRI-X 400 at 6, 7, 9 and 11 min: curves/tri_x_400.csv (source SE-S12). */
  private static CurveFamily triX() {
    List<DevelopedCurve> curves = new ArrayList<>();
    for (int minutes : new int[] {6, 7, 9, 11}) {
      List<StepReading> readings =
          rows("curves/tri_x_400")
              .filter(row -> row.number("minutes") == minutes)
              .map(row -> StepReading.of(row.number("log10_h"), row.number("density")))
              .toList();
      curves.add(
          new DevelopedCurve(
              Duration.ofMinutes(minutes), read(readings, readings.get(0).density().value())));
    }
    return new CurveFamily(curves);
  }

  private static Stream<ReferenceRow> rows(String table) {
    return ReferenceTable.open(table).rows().stream();
  }

  private static double value(CurveResults results, Measure measure) {
    return results.get(measure).value().orElseThrow();
  }

  @Test
  void ofTriXOnlySevenMinutesMeetsTheContrast() {
    List<Boolean> met =
        triX().curves().stream().map(one -> one.results().condition().isMet()).toList();

    assertThat(met).containsExactly(false, true, false, false);
  }

  @Test
  void fixedDensitySpeedRisesMuchMoreThanSpeedByDeltaX() {
    List<SpeedAtTime> speeds = triX().speed();
    SpeedAtTime first = speeds.get(0);
    SpeedAtTime last = speeds.get(speeds.size() - 1);

    assertThat(
            last.fixedDensity().value().orElseThrow() / first.fixedDensity().value().orElseThrow())
        .isCloseTo(1.65, within(0.02));
    assertThat(last.byDeltaX().value().orElseThrow() / first.byDeltaX().value().orElseThrow())
        .isCloseTo(1.10, within(0.02));
  }

  /** LER 1.05 and flare 0.40 are those of SE-S42 and S55: N wants 0.583, see n_development. */
  @Test
  void theFamilyGivesTimesOnlyWithinItself() {
    List<TimeForN> times = triX().times(new PrintAim(1.05, 0.40, Measure.AVERAGE_GRADIENT), SEED);

    assertThat(times).extracting(TimeForN::n).containsExactly(-2, -1, 0, 1, 2);
    assertThat(times.get(0).time()).as("0.437 is less than 6 min gives").isEmpty();
    assertThat(times.get(1).time()).as("so is 0.500").isEmpty();
    assertThat(times.get(2).time().orElseThrow().seconds()).isBetween(360.0, 420.0);
    assertThat(times.get(3).time().orElseThrow().seconds()).isBetween(420.0, 540.0);
    assertThat(times.get(4).time()).as("0.877 is more than 11 min gives").isEmpty();
    assertThat(times.get(2).time().orElseThrow().lowSeconds().orElse(0))
        .isLessThan(times.get(2).time().orElseThrow().seconds());
  }

  /** Rows of curves/n_development.csv (sources SE-S42, SE-S55). */
  @Test
  void gradientsForNAreThoseOfTheTable() {
    rows("curves/n_development")
        .forEach(
            row -> {
              int n = (int) row.number("n");
              assertThat(new PrintAim(1.05, 0, Measure.CONTRAST_INDEX).gradient(n))
                  .isCloseTo(row.number("gradient_no_flare"), within(0.0006));
              assertThat(new PrintAim(1.05, 0.40, Measure.CONTRAST_INDEX).gradient(n))
                  .isCloseTo(row.number("gradient_flare_0_40"), within(0.0006));
            });
  }

  /** Row K01 (DV-S23): log Hm −2.715 of TRI-X 400 at 6 min is a speed of 415. */
  @Test
  void theSpeedOfASpeedPoint() {
    double luxSeconds = Math.pow(10, -2.715);
    // a hinge whose speed point lies at −2.715
    List<StepReading> readings = new ArrayList<>();
    double toe = -2.715 - 0.1 / 0.6;
    for (int i = -4; i <= 16; i++) {
      readings.add(StepReading.of(toe + 0.15 * i, Math.max(0, 0.6 * 0.15 * i)));
    }
    CurveResults found = read(readings, 0);

    assertThat(LogExposure.fromLuxSeconds(luxSeconds).log10LuxSeconds())
        .isCloseTo(value(found, Measure.LOG_HM), within(0.001));
    assertThat(value(found, Measure.EXPOSURE_INDEX)).isCloseTo(415, within(1.0));
  }

  /** Row K15 (DV-S21): PLUS-X 125 in D-76, 11 min, curve H01, base taken as 0.277. */
  @Test
  void plusXInD76() {
    List<StepReading> readings =
        rows("development/characteristic_curves")
            .filter(row -> row.text("id").startsWith("H01"))
            .map(row -> StepReading.of(row.number("log_exposure"), row.number("density")))
            .toList();
    CurveResults found = read(readings, 0.277);

    assertThat(value(found, Measure.LOG_HM)).isCloseTo(-2.458, within(0.01));
    assertThat(value(found, Measure.EXPOSURE_INDEX)).isCloseTo(230, within(5.0));
    assertThat(value(found, Measure.DELTA_D) / 1.30).isCloseTo(0.937, within(0.01));
    assertThat(found.condition()).isEqualTo(ContrastCondition.NOT_MET);
  }
}
