package org.wetside.app.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.Wetside;
import org.wetside.app.plan.LoadWish;
import org.wetside.app.plan.Tonight;
import org.wetside.core.bath.BathKind;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.Recipe;
import org.wetside.core.plan.Tank;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.thermal.BathTempered;
import org.wetside.core.thermal.Liquid;
import org.wetside.core.thermal.Tempering;
import org.wetside.core.thermal.Water;
import org.wetside.core.thermal.WaterAtHand;

/** Rolls, tank, bottles and waters are invented. */
class TemperLoadTest {
  private Wetside wetside;
  private long load;

  @BeforeEach
  void open(@TempDir Path home) {
    wetside = Wetside.open(home, Clock.systemUTC());
    wetside
        .keepTanks()
        .add(
            new Tank(
                "Double",
                Vessel.SMALL_TANK,
                List.of(new Tank.Room(FilmFormat.SMALL, 2, Volume.ofMillilitres(300))),
                Volume.ofMillilitres(650)));
    wetside.addRolls().lines("A-1 135 36 TRI-X 400 @400\nA-2 135 36 TRI-X 400 @400");
    bottle("D", "D-76", BottleRole.STOCK, BathKind.DEVELOPER);
    bottle("F", "fixer", BottleRole.WORKING, BathKind.FIXER);
    load =
        wetside
            .makeLoad()
            .make(
                new LoadWish(
                    List.of("A-1", "A-2"),
                    "Double",
                    "small-tank",
                    new Recipe("D-76", Dilution.parse("1+1"), Temperature.ofCelsius(20)),
                    Optional.empty(),
                    Optional.of(Volume.ofMillilitres(600)),
                    Map.of(BathKind.DEVELOPER, "D", BathKind.FIXER, "F"),
                    Optional.empty(),
                    ""))
            .id();
  }

  private void bottle(String letter, String contents, BottleRole role, BathKind bath) {
    wetside
        .addBottle()
        .add(BottleLabel.of(letter, contents, role, bath, Volume.ofLitres(1)), Volume.ofLitres(1));
  }

  @AfterEach
  void close() {
    wetside.close();
  }

  private LoadTempered tempered(TemperWish wish) {
    return wetside.temperLoad().of(load, wish);
  }

  private static WaterAtHand water(String name, double celsius) {
    return new WaterAtHand(name, Temperature.ofCelsius(celsius));
  }

  private static BathTempered bath(LoadTempered all, String name) {
    return all.baths().stream()
        .filter(one -> one.bath().name().startsWith(name))
        .findFirst()
        .orElseThrow();
  }

  private static TemperWish winter(Optional<Duration> tau) {
    return new TemperWish(
        List.of(water("cold", 9), water("hot", 55)), Optional.of(Temperature.ofCelsius(16)), tau);
  }

  @Test
  void everyBathIsThereOnceAndTheDeveloperComesLast() {
    LoadTempered all = tempered(winter(Optional.empty()));
    assertThat(all.baths()).extracting(one -> one.bath().name()).doesNotHaveDuplicates();
    assertThat(all.baths().get(0).way()).isEqualTo(BathTempered.Way.STAND_IN_WATER);
    assertThat(all.baths().get(all.baths().size() - 1).bath().name())
        .isEqualTo("Developer, bottle D");
    assertThat(bath(all, "Fixer").way()).isEqualTo(BathTempered.Way.STAND_IN_WATER);
    assertThat(all.cautions()).singleElement().asString().contains("scalds");
  }

  /** Stock of the room is counted in: 300 mL at 16 °C, so that the water has to be warmer. */
  @Test
  void theDevelopersStockIsCountedIn() {
    BathTempered developer = bath(tempered(winter(Optional.empty())), "Developer");
    Tempering.Reached reached = (Tempering.Reached) developer.waters();
    assertThat(reached.waterTemperature().celsius()).isCloseTo(24, within(0.05));
    assertThat(reached.pour().stream().mapToDouble(one -> one.volume().millilitres()).sum())
        .isCloseTo(300, within(3.0));
    assertThat(reached.pour()).extracting(Liquid::name).containsExactly("cold", "hot");
  }

  @Test
  void whatTheTemperatureIsAtThePourNeedsAMeasuredTimeConstant() {
    assertThat(bath(tempered(winter(Optional.empty())), "Fixer").atPour()).isEmpty();
    BathTempered fixer = bath(tempered(winter(Optional.of(Duration.ofHours(1)))), "Fixer");
    double minutes = fixer.bath().pouredAfter().toSeconds() / 60.0;
    assertThat(fixer.atPour().orElseThrow().celsius())
        .isCloseTo(16 + 4 * Math.exp(-minutes / 60), within(1e-9));
  }

  /** Near enough to develop: TRI-X 400 in D-76 has a printed series over temperature (DV-T01). */
  @Test
  void theAlternativeIsTheTimeAtTheTemperatureThereIs() {
    LoadTempered warm =
        tempered(
            new TemperWish(
                List.of(water("cold", 23)),
                Optional.of(Temperature.ofCelsius(23)),
                Optional.empty()));
    LoadTempered.Alternative there = warm.alternative().orElseThrow();
    assertThat(there.temperature()).isEqualTo(Temperature.ofCelsius(23));
    assertThat(there.time().orElseThrow().time()).isLessThan(warm.load().time().time());
    LoadTempered cold = tempered(winter(Optional.empty()));
    assertThat(cold.alternative().orElseThrow().time()).isEmpty();
    assertThat(cold.alternative().get().why()).contains("18 °C");
    assertThat(bath(warm, "Developer").waters()).isInstanceOf(Tempering.CannotBeReached.class);
  }

  @Test
  void whatWasReadTonightComesBeforeTheWatersOfTheHouse() {
    assertThatThrownBy(() -> tempered(TemperWish.asKept()))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("waters at hand \"none\"");
    wetside.keepWaters().put(house("tap", 12));
    wetside.keepWaters().put(house("boiler", 60));
    assertThat(tempered(TemperWish.asKept()).waters())
        .containsExactly(water("tap", 12), water("boiler", 60));
    assertThat(tempered(TemperWish.asKept()).roomSaid()).isFalse();
    wetside
        .keepTonight()
        .say(
            new Tonight(
                Optional.of(Temperature.ofCelsius(18)),
                Optional.of(Temperature.ofCelsius(8)),
                Optional.empty(),
                Optional.empty()));
    LoadTempered tonight = tempered(TemperWish.asKept());
    assertThat(tonight.waters()).containsExactly(water("tap", 8), water("boiler", 60));
    assertThat(tonight.room()).isEqualTo(Temperature.ofCelsius(18));
  }

  private static Water house(String name, double celsius) {
    return new Water(name, Temperature.ofCelsius(celsius), Water.Hardness.HARD);
  }

  @Test
  void watersAreKeptByNameInAnyCase() {
    wetside.keepWaters().put(house("Cold tap", 12));
    wetside.keepWaters().put(new Water("cold TAP", Temperature.ofCelsius(10), Water.Hardness.SOFT));
    assertThat(wetside.keepWaters().all())
        .containsExactly(new Water("cold TAP", Temperature.ofCelsius(10), Water.Hardness.SOFT));
    for (int i = 1; i < 12; i++) {
      wetside.keepWaters().put(house("w" + i, i));
    }
    assertThatThrownBy(() -> wetside.keepWaters().put(house("one more", 1)))
        .hasMessageContaining("at most 12");
    assertThat(wetside.keepWaters().remove("COLD tap")).isTrue();
    assertThat(wetside.keepWaters().remove("cold tap")).isFalse();
    assertThat(wetside.keepWaters().find("w3")).contains(house("w3", 3));
  }

  @Test
  void aLoadThatIsNotThereIsRefused() {
    assertThatThrownBy(() -> wetside.temperLoad().of(99, winter(Optional.empty())))
        .hasMessageContaining("load \"99\"");
  }
}
