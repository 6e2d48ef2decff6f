package org.wetside.app.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.CannotDoException;
import org.wetside.app.Wetside;
import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.StockRequirement;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.ChosenTime;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.LoadState;
import org.wetside.core.plan.Recipe;
import org.wetside.core.plan.RollState;
import org.wetside.core.plan.Tank;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Standing;

/** Tanks and rolls here are invented; the times are those of the published rows. */
class MakeLoadTest {
  private Wetside wetside;

  @BeforeEach
  void open(@TempDir Path home) {
    wetside = Wetside.open(home, Clock.systemUTC());
    wetside
        .keepTanks()
        .add(
            new Tank(
                "Double",
                Vessel.SMALL_TANK,
                List.of(
                    new Tank.Room(FilmFormat.SMALL, 2, Volume.ofMillilitres(300)),
                    new Tank.Room(FilmFormat.MEDIUM, 1, Volume.ofMillilitres(500))),
                Volume.ofMillilitres(650)));
    wetside
        .addRolls()
        .lines(
            String.join(
                "\n",
                "A-1 135 36 TRI-X 400 @400 \"one\"",
                "A-2 135 36 TRI-X 400 @400 \"two\"",
                "A-3 135 36 T-MAX P3200 @3200 \"three\"",
                "A-4 135 36 TRI-X 400 @400 \"four\"",
                "A-5 135 36 a film nobody knows @50"));
  }

  @AfterEach
  void close() {
    wetside.close();
  }

  /** Row E017 (source DV-T01): 6.75 min for TRI-X 400 in D-76 stock at 68 °F in a small tank. */
  @Test
  void rollsThatWantTheSameTimeShareIt() {
    PreparedLoad prepared = wetside.makeLoad().prepared(wish("A-1", "A-2"));
    assertThat(prepared.inTheWay()).isEmpty();
    assertThat(prepared.time().orElseThrow().time()).isEqualTo(Duration.ofSeconds(405));
    assertThat(prepared.time().get().standing()).isEqualTo(Standing.PUBLISHED);
    assertThat(prepared.fill()).isEqualTo(Volume.ofMillilitres(600));
    assertThat(prepared.length().orElseThrow()).isGreaterThan(Duration.ofSeconds(405));
  }

  @Test
  void aLoadTakesItsRollsAndGivesThemBack() {
    Load load = wetside.makeLoad().make(wish("A-1", "A-2"));
    assertThat(state("A-1")).isEqualTo(RollState.LOADED);
    assertThatThrownBy(() -> wetside.makeLoad().make(wish("A-2")))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("it is loaded already");
    wetside.makeLoad().change(load.id(), wish("A-2", "A-4"));
    assertThat(state("A-1")).isEqualTo(RollState.WAITING);
    assertThat(state("A-4")).isEqualTo(RollState.LOADED);
    wetside.makeLoad().dissolve(load.id());
    assertThat(state("A-4")).isEqualTo(RollState.WAITING);
    assertThat(wetside.listLoads().find(load.id()).orElseThrow().state())
        .isEqualTo(LoadState.DISSOLVED);
  }

  @Test
  void theReasonIsSaidWhenRollsMayNotShare() {
    assertThatThrownBy(() -> wetside.makeLoad().make(wish("A-1", "A-2", "A-4")))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("Double does not take 3 135 reels at once.");
    assertThat(wetside.makeLoad().prepared(wish("A-1", "A-3")).inTheWay())
        .anySatisfy(reason -> assertThat(reason).contains("no time is within 5 % of both"));
    assertThat(state("A-1")).isEqualTo(RollState.WAITING);
  }

  @Test
  void withoutAnHonestTimeOneLineOfTheLeafletHelps() {
    assertThat(wetside.makeLoad().prepared(wish("A-5")).inTheWay())
        .singleElement()
        .asString()
        .startsWith("A-5: ");
    LoadWish own =
        new LoadWish(
            List.of("A-5"),
            "Double",
            "small-tank",
            stock(),
            Optional.of(
                new ChosenTime(
                    Duration.ofMinutes(8), Standing.PUBLISHED, "its leaflet", Optional.empty())),
            Optional.empty(),
            Map.of(BathKind.DEVELOPER, "D"),
            Optional.empty(),
            "");
    Load load = wetside.makeLoad().make(own);
    assertThat(wetside.listLoads().find(load.id()).orElseThrow().time().source())
        .isEqualTo("its leaflet");
  }

  @Test
  void anUnknownMinimumIsAnOpenCheckAndAKnownOneRaisesTheFill() {
    assertThat(wetside.makeLoad().prepared(diluted()).stock().orElseThrow())
        .isInstanceOf(StockRequirement.MinimumUnknown.class);
    wetside.keepMinimum().put("MICRODOL-X", Volume.ofMillilitres(250), "an invented leaflet");
    PreparedLoad prepared = wetside.makeLoad().prepared(diluted());
    assertThat(prepared.covers()).isEqualTo(Volume.ofMillilitres(300));
    assertThat(prepared.fill()).isEqualTo(Volume.ofMillilitres(500));
    assertThat(prepared.stock().orElseThrow().passed()).isTrue();
  }

  @Test
  void aFillThatDoesNotCoverOrDoesNotFitIsRefusedWithTheLimit() {
    assertThatThrownBy(() -> wetside.makeLoad().prepared(filled(299)))
        .hasMessageContaining("fill \"299 mL\" is refused: the film is covered by 300 mL");
    assertThatThrownBy(() -> wetside.makeLoad().prepared(filled(651)))
        .hasMessageContaining("Double holds 650 mL");
  }

  @Test
  void aLoadAtTheBenchStaysAsItIs() {
    Load load = wetside.makeLoad().make(wish("A-1"));
    wetside.startRun().of(load.id());
    assertThatThrownBy(() -> wetside.makeLoad().dissolve(load.id()))
        .isInstanceOf(CannotDoException.class)
        .hasMessageContaining("at the Bench");
  }

  @Test
  void whatThereIsTonightStaysUntilItIsSaidAnew() {
    Tonight said =
        new Tonight(
            Optional.of(Temperature.ofCelsius(15)),
            Optional.of(Temperature.ofCelsius(9)),
            Optional.empty(),
            Optional.of(LocalTime.of(22, 0)));
    wetside.keepTonight().say(said);
    assertThat(wetside.keepTonight().now()).isEqualTo(said);
    wetside.keepTonight().say(Tonight.notSaid());
    assertThat(wetside.keepTonight().now()).isEqualTo(Tonight.notSaid());
  }

  private RollState state(String number) {
    return wetside.findRolls().byNumber(number).orElseThrow().state();
  }

  private static Recipe stock() {
    return new Recipe("D-76", Dilution.stock(), Temperature.ofCelsius(20));
  }

  private static LoadWish wish(String... rolls) {
    return new LoadWish(
        List.of(rolls),
        "Double",
        "small-tank",
        stock(),
        Optional.empty(),
        Optional.empty(),
        Map.of(),
        Optional.empty(),
        "");
  }

  private static LoadWish filled(double millilitres) {
    return new LoadWish(
        List.of("A-1"),
        "Double",
        "small-tank",
        stock(),
        Optional.empty(),
        Optional.of(Volume.ofMillilitres(millilitres)),
        Map.of(),
        Optional.empty(),
        "");
  }

  private static LoadWish diluted() {
    return new LoadWish(
        List.of("A-1"),
        "Double",
        "small-tank",
        new Recipe("MICRODOL-X", Dilution.parse("1+1"), Temperature.ofCelsius(20)),
        Optional.empty(),
        Optional.empty(),
        Map.of(),
        Optional.empty(),
        "");
  }
}
