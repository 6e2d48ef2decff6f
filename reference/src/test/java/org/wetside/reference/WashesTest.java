package org.wetside.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.Collections;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.DilutionRatio;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Standing;
import org.wetside.core.wash.CarriedLiquid;
import org.wetside.core.wash.WashFigures;
import org.wetside.core.wash.WashForecast;
import org.wetside.core.wash.WashMethod;
import org.wetside.core.wash.WashQuestion;
import org.wetside.core.wash.WashVerdict;
import org.wetside.core.wash.WaterChange;

class WashesTest {
  private static final WashFigures FIGURES = Washes.figures();
  private static final Volume FILL = Volume.ofMillilitres(500);

  private static WashForecast sixFills(Duration dwell, Temperature water) {
    return WashForecast.of(
        new WashQuestion(
            CarriedLiquid.of(
                UnitOfUse.ONE_ROLL, FIGURES.carriedPerRoll(), FIGURES.absorbedPerRoll()),
            FIGURES.start(),
            water,
            Collections.nCopies(6, WaterChange.standing(FILL, dwell))),
        FIGURES);
  }

  @Test
  void bothHalfTimesAreFollowed() {
    assertThat(FIGURES.halfTimes())
        .extracting(half -> half.ordinary().toSeconds() + " s " + half.citation().sourceId())
        .containsExactly("15 s CH-S07", "60 s CH-S03");
    assertThat(FIGURES.limit().most().gramsPerSquareMetre()).isEqualTo(0.014);
    assertThat(FIGURES.limit().citation().sourceId()).isEqualTo("CH-S24");
  }

  /** Six quick fills: the rule of fills promises what neither half-time gives. */
  @Test
  void quickFillsLeaveFarMoreThanTheRuleSays() {
    WashForecast quick = sixFills(Duration.ofSeconds(20), Temperature.ofCelsius(20));
    double rule = quick.equilibriumResidues().get(5).gramsPerSquareMetre();
    assertThat(quick.byHalfTime())
        .allSatisfy(one -> assertThat(one.atEnd().gramsPerSquareMetre()).isGreaterThan(100 * rule));
    assertThat(quick.byHalfTime().get(1).atEnd()).isEqualTo(quick.mostAtEnd());
    assertThat(quick.verdict()).isEqualTo(WashVerdict.HALF_TIMES_DISAGREE);
    assertThat(sixFills(Duration.ofMinutes(10), Temperature.ofCelsius(20)).verdict())
        .isEqualTo(WashVerdict.BELOW);
    assertThat(sixFills(Duration.ofSeconds(2), Temperature.ofCelsius(20)).verdict())
        .isEqualTo(WashVerdict.ABOVE);
    assertThat(quick.water()).isEqualTo(Volume.ofLitres(3));
    assertThat(quick.length()).isEqualTo(Duration.ofSeconds(6 * 30));
  }

  /** Row RL30 (DV-S15), a rule for prints: the half-time, not the rate, is doubled at 10 °C. */
  @Test
  void coldWaterDoublesTheHalfTimes() {
    assertThat(sixFills(Duration.ofSeconds(20), Temperature.ofCelsius(10)).byHalfTime())
        .extracting(one -> one.halfTime().toSeconds())
        .containsExactly(30L, 120L);
  }

  @Test
  void everyMethodOnFileCanBeForeseen() {
    assertThat(Washes.methods().get(0).slug()).isEqualTo("changes-10");
    assertThat(Washes.methods()).hasSize(6);
    for (WashMethod method : Washes.methods()) {
      assertThat(method.changes(FILL, Optional.empty())).isNotEmpty();
    }
    WashMethod running =
        Washes.methods().stream()
            .filter(one -> one.slug().equals("running-20"))
            .findFirst()
            .orElseThrow();
    WaterChange only = running.changes(FILL, Optional.empty()).get(0);
    assertThat(only.flow().litresPerMinute()).isCloseTo(0.5 / 3, within(1e-12));
    assertThat(only.used().millilitres()).isCloseTo(500 + 20 / 3.0 * 500, within(1e-6));
  }

  @Test
  void wettingAgentIsMeasuredOutAndRecalledFiguresSaySo() {
    assertThat(
            Washes.drying()
                .agent()
                .of(Volume.ofMillilitres(603), Optional.empty())
                .concentrate()
                .millilitres())
        .isCloseTo(3, within(1e-9));
    assertThat(
            Washes.drying()
                .agent()
                .of(Volume.ofMillilitres(606), Optional.of(DilutionRatio.ofParts(1, 100)))
                .concentrate()
                .millilitres())
        .isCloseTo(6, within(1e-9));
    assertThat(Washes.drying().agent().dilutionStanding()).isEqualTo(Standing.FROM_MEMORY);
    assertThat(Washes.drying().ways().get(0).standing()).isEqualTo(Standing.FROM_MEMORY);
  }
}
