package org.wetside.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.core.development.Film;
import org.wetside.core.development.FilmCatalogue;
import org.wetside.core.development.FilmMatch;
import org.wetside.core.quantity.BadValueException;

class FilmNamesTest {
  private static final FilmCatalogue FILMS = DevelopmentTimes.films();

  @ParameterizedTest
  @CsvSource({
    "T-MAX 400, TMY-2",
    "tmax400, TMY-2",
    "Kodak T-Max 400, TMY-2",
    "TMY, TMY",
    "T-MAX 400 (TMY), TMY",
    "TRI-X 400, 400TX",
    "tri x 400, 400TX",
    "400tx, 400TX",
    "P30, P30",
    "P3200, P3200TMZ",
    "T-MAX 100, 100TMX",
    "Presto, PRESTO",
    "double-x, 5222"
  })
  void findsTheNewestCoatingOfWhatWasTyped(String typed, String code) {
    assertThat(FILMS.find(typed)).isInstanceOf(FilmMatch.Found.class);
    assertThat(((FilmMatch.Found) FILMS.find(typed)).newest().code()).isEqualTo(code);
  }

  @Test
  void listsTheFormerCoatingsBesideTheNewest() {
    FilmMatch.Found found = (FilmMatch.Found) FILMS.find("T-MAX 400");
    assertThat(found.coatings()).extracting(Film::code).containsExactly("TMY-2", "TMY");
  }

  @ParameterizedTest
  @CsvSource({"T-MAX", "TRI-X", "Neopan", "APX"})
  void listsTheFilmsWhereSeveralMayBeMeant(String typed) {
    assertThat(FILMS.find(typed)).isInstanceOf(FilmMatch.Ambiguous.class);
    assertThat(((FilmMatch.Ambiguous) FILMS.find(typed)).films()).hasSizeGreaterThan(1);
  }

  @ParameterizedTest
  @CsvSource({"TRX 400, 400TX", "T-MAC 100, 100TMX"})
  void namesTheNearestWhereNoneIsKnown(String typed, String code) {
    assertThat(FILMS.find(typed)).isInstanceOf(FilmMatch.NotFound.class);
    assertThat(((FilmMatch.NotFound) FILMS.find(typed)).nearest())
        .extracting(Film::code)
        .contains(code);
  }

  @ParameterizedTest
  @CsvSource({
    "d76, D-76",
    "D-76, D-76",
    "tmax, T-MAX",
    "T-MAX RS, T-MAX RS",
    "hc 110, HC-110",
    "xtol, XTOL"
  })
  void findsDevelopersAsTheyAreTyped(String typed, String name) {
    assertThat(DevelopmentTimes.developers().require(typed).name()).isEqualTo(name);
  }

  @Test
  void namesTheNearestDevelopersWhereNoneIsKnown() {
    assertThatThrownBy(() -> DevelopmentTimes.developers().require("D-67"))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("D-67")
        .hasMessageContaining("D-76");
  }
}
