package org.wetside.core.bath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.DilutionRatio;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

class BathsTest {
  /** Invented, for arithmetic only. */
  private static final StockMinimum SIX_ML =
      new StockMinimum(Volume.ofMillilitres(6), Standing.MEASURED, Citation.of("own rule"));

  private static Volume ml(double millilitres) {
    return Volume.ofMillilitres(millilitres);
  }

  /**
   * Rows CK12 (CH-S46), CK13 (CH-S38) and CK14 (CH-S99): how much concentrate a total of working
   * solution takes.
   */
  @ParameterizedTest(name = "{0}: {1}, {2} mL")
  @CsvSource({
    "CK12, 1+19, 500, 25.0, 475.0", "CK13, 1+4, 600, 120.0, 480.0", "CK14, 1+1, 1000, 500.0, 500.0",
    "CK14, 1+3, 1000, 250.0, 750.0", "CK14, 1+9, 1000, 100.0, 900.0",
        "CK14, 1+31, 1000, 31.25, 968.75",
    "CK14, 1+50, 1000, 19.61, 980.39"
  })
  void mixesByParts(String row, String dilution, double total, double concentrate, double water) {
    WorkingSolution mix = WorkingSolution.of(Dilution.parse(dilution), ml(total));
    assertThat(mix.concentrate().millilitres()).as(row).isCloseTo(concentrate, within(0.01));
    assertThat(mix.water().millilitres()).as(row).isCloseTo(water, within(0.01));
    assertThat(mix.total().millilitres()).isCloseTo(total, within(1e-9));
  }

  @Test
  void aLetterWithoutPartsCannotBeMixed() {
    assertThatThrownBy(() -> WorkingSolution.of(Dilution.parse("B"), ml(600)))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("leaflet");
  }

  /** CH-S32, CH-S31: the makers' roll is 80 in², which is 8×10 in and half of it two 4×5 in. */
  @ParameterizedTest
  @CsvSource({"203.2, 254, 1.0", "101.6, 127, 0.25"})
  void sheetsCountByArea(double width, double height, double rolls) {
    assertThat(UnitOfUse.ofSheet(width, height).rolls()).isCloseTo(rolls, within(1e-9));
  }

  /** Row CK22 (CH-S99): 120 has 79.12 in², so it counts as one; row CK21: 135-36 has 86.80 in². */
  @Test
  void rollsCountByTradeAndNotByArea() {
    assertThat(UnitOfUse.ofSquareCentimetres(510.45).rolls()).isCloseTo(79.12 / 80, within(1e-4));
    assertThat(UnitOfUse.ofSquareCentimetres(560.0).rolls()).isCloseTo(86.80 / 80, within(1e-4));
    assertThat(UnitOfUse.of135(36).rolls()).isEqualTo(1.0);
    assertThat(UnitOfUse.of135(24).rolls()).isEqualTo(0.75);
  }

  @Test
  void anUnknownMinimumIsOpenAndNeverPassed() {
    StockRequirement open = StockRequirement.check(ml(8), UnitOfUse.ONE_ROLL, Optional.empty());
    assertThat(open).isInstanceOf(StockRequirement.MinimumUnknown.class);
    assertThat(open.passed()).isFalse();
  }

  @Test
  void saysHowMuchIsMissing() {
    StockRequirement check =
        StockRequirement.check(ml(8), UnitOfUse.ofRolls(2), Optional.of(SIX_ML));
    assertThat(check).isInstanceOf(StockRequirement.TooLittle.class);
    assertThat(((StockRequirement.TooLittle) check).missing()).isEqualTo(ml(4));
    assertThat(check.passed()).isFalse();
    assertThat(StockRequirement.check(ml(12), UnitOfUse.ofRolls(2), Optional.of(SIX_ML)).passed())
        .isTrue();
  }

  @Test
  void raisesTheFillForStockAndSaysWhenTheTankIsTooSmall() {
    DilutionRatio dilution = DilutionRatio.ofParts(1, 31);
    assertThat(
            SmallestFill.of(ml(300), ml(650), dilution, UnitOfUse.ofRolls(2), Optional.of(SIX_ML)))
        .isEqualTo(new SmallestFill.Fits(ml(384), true));
    SmallestFill none =
        SmallestFill.of(ml(300), ml(350), dilution, UnitOfUse.ofRolls(2), Optional.of(SIX_ML));
    assertThat(none).isInstanceOf(SmallestFill.DoesNotFit.class);
    assertThat(((SmallestFill.DoesNotFit) none).most().rolls())
        .isCloseTo(350.0 / 32 / 6, within(1e-9));
    assertThat(SmallestFill.of(ml(300), ml(650), dilution, UnitOfUse.ONE_ROLL, Optional.empty()))
        .isEqualTo(new SmallestFill.Fits(ml(300), false));
  }

  static LongStream seeds() {
    return LongStream.range(0, 100);
  }

  /** The smallest fill passes the check, and a drop less does not when stock asked for it. */
  @ParameterizedTest
  @MethodSource("seeds")
  void theSmallestFillIsEnoughAndSmallest(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    DilutionRatio dilution = DilutionRatio.ofParts(1, random.nextInt(0, 60));
    UnitOfUse film = UnitOfUse.ofRolls(random.nextDouble(0.25, 4));
    StockMinimum minimum =
        new StockMinimum(ml(random.nextDouble(2, 240)), Standing.MEASURED, Citation.of("own rule"));
    SmallestFill answer = SmallestFill.of(ml(250), ml(1000), dilution, film, Optional.of(minimum));
    if (answer instanceof SmallestFill.Fits fits) {
      assertThat(passes(dilution, fits.fill(), film, minimum)).isTrue();
      if (fits.raisedForStock()) {
        assertThat(passes(dilution, fits.fill().times(0.999), film, minimum)).isFalse();
      }
    } else {
      assertThat(passes(dilution, ml(1000), film, minimum)).isFalse();
      UnitOfUse most = ((SmallestFill.DoesNotFit) answer).most();
      assertThat(passes(dilution, ml(1000), most, minimum)).isTrue();
    }
  }

  private static boolean passes(
      DilutionRatio dilution, Volume fill, UnitOfUse film, StockMinimum minimum) {
    return StockRequirement.check(dilution.concentrateIn(fill), film, Optional.of(minimum))
        .passed();
  }
}
