package org.wetside.core.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.source.Standing;

/** One new time for all films of a tank, or none. Every time is invented. */
class OtherDilutionTest {
  private static final Dilution STOCK = Dilution.stock();
  private static final OtherDilution.FilmTime FIRST = film("one", 400, Standing.PUBLISHED);
  private static final OtherDilution.FilmTime SECOND = film("two", 460, Standing.COMPUTED);
  private static final OtherDilution.FilmTime UNKNOWN =
      new OtherDilution.FilmTime("three", Optional.empty());

  @Test
  void theFirstFilmLeadsAndTheDifferenceIsSaid() {
    OtherDilution both = OtherDilution.of(STOCK, List.of(FIRST, SECOND)).orElseThrow();
    assertThat(both.time().time()).isEqualTo(Duration.ofSeconds(400));
    assertThat(both.apart()).containsExactly(SECOND);
    OtherDilution turned = OtherDilution.of(STOCK, List.of(SECOND, FIRST)).orElseThrow();
    assertThat(turned.time().time()).isEqualTo(Duration.ofSeconds(460));
    assertThat(turned.apart()).containsExactly(FIRST);
  }

  @Test
  void itsStandingIsThatOfTheWeakest() {
    assertThat(OtherDilution.of(STOCK, List.of(FIRST, SECOND)).orElseThrow().time().standing())
        .isEqualTo(Standing.COMPUTED);
  }

  @Test
  void oneFilmWithoutAnHonestTimeForbidsIt() {
    assertThat(OtherDilution.of(STOCK, List.of(FIRST, UNKNOWN))).isEmpty();
    assertThat(OtherDilution.of(STOCK, List.of(UNKNOWN))).isEmpty();
  }

  @Test
  void twoRollsOfOneFilmDoNotDiffer() {
    assertThat(OtherDilution.of(STOCK, List.of(FIRST, FIRST)).orElseThrow().apart()).isEmpty();
  }

  private static OtherDilution.FilmTime film(String name, int seconds, Standing standing) {
    return new OtherDilution.FilmTime(
        name,
        Optional.of(
            new ChosenTime(Duration.ofSeconds(seconds), standing, "a leaflet", Optional.empty())));
  }
}
