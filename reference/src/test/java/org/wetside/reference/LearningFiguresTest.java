package org.wetside.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wetside.core.development.Developer;
import org.wetside.core.development.Film;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.TimeLibrary;
import org.wetside.core.development.TimeQuestion;
import org.wetside.core.development.Vessel;
import org.wetside.core.learning.ContrastBasis;
import org.wetside.core.learning.ContrastWord;
import org.wetside.core.learning.LearningRules;
import org.wetside.core.learning.MakersContrast;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.Temperature;

/** The file of learning, and series on file as what a measured contrast is held against. */
class LearningFiguresTest {
  private final TimeLibrary library = DevelopmentTimes.library();

  @Test
  void everyWordHasItsWorth() {
    LearningRules rules = LearningFigures.read();

    assertThat(rules.contrast()).hasSize(5);
    assertThat(rules.shadows()).hasSize(4);
    assertThat(rules.contrast())
        .hasEntrySatisfying(ContrastWord.FLAT, worth -> assertThat(worth.value()).isPositive());
    assertThat(rules.time().roll()).isEqualTo(0.04);
  }

  /** The toe of the TRI-X 400 curves of SE-S12, digitised to 0.02 in density. */
  @Test
  void theToeIsThatOfThePublishedCurves() {
    LearningRules rules = LearningFigures.read();

    assertThat(rules.toe().stopsAt(0.10).orElseThrow()).isCloseTo(0, within(1e-12));
    // between the readings of the four curves: -0.18 to -0.20 at 0.05, 0.34 to 0.45 at 0.30
    assertThat(rules.toe().stopsAt(0.05).orElseThrow() * Math.log10(2)).isBetween(-0.22, -0.15);
    assertThat(rules.toe().stopsAt(0.30).orElseThrow() * Math.log10(2)).isBetween(0.34, 0.45);
    assertThat(rules.toe().stopsAt(0.03)).isEmpty();
    assertThat(rules.toe().stopsAt(0.31)).isEmpty();
  }

  private MakersContrast.Found contrast(String film, String developer, String dilution) {
    Film known =
        DevelopmentTimes.films().films().stream()
            .filter(one -> one.code().equals(film))
            .findFirst()
            .orElseThrow();
    Developer in = DevelopmentTimes.developers().require(developer);
    return new MakersContrast(library)
        .of(
            TimeQuestion.of(
                known,
                FilmFormat.SMALL,
                in,
                Dilution.parse(dilution),
                ExposureIndex.of(known.code().equals("400TX") ? 400 : 100),
                Temperature.ofCelsius(21.5),
                Vessel.SMALL_TANK));
  }

  /**
   * T-MAX 100 in D-76 1+1 (figure 3.237 of DV-T01): contrast index 0.56 to 0.82 between 9.36 and
   * 13.34 minutes, which is a slope of 1.08 on the whole.
   */
  @Test
  void theSeriesGivesContrastAndSlopeAtTheMakersTime() {
    ContrastBasis basis = contrast("100TMX", "D-76", "1+1").basis().orElseThrow();

    assertThat(basis.expected()).isBetween(0.56, 0.82);
    assertThat(basis.slope()).isBetween(0.8, 1.5);
    assertThat(basis.series()).contains("contrast index", "1+1", "DV-T01");
  }

  @Test
  void withoutASeriesItSaysWhy() {
    MakersContrast.Found none = contrast("400TX", "XTOL", "stock");

    assertThat(none.basis()).isEqualTo(Optional.empty());
    assertThat(none.why()).contains("no series of contrast against time of TRI-X 400 in XTOL");
  }
}
