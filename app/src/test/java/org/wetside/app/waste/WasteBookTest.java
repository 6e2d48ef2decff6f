package org.wetside.app.waste;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetside.app.Wetside;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.waste.FilledJug;
import org.wetside.core.waste.Jug;
import org.wetside.core.waste.SilverEstimate;
import org.wetside.core.waste.WasteKind;
import org.wetside.reference.UsedFixer;

/** Jugs and bottles here are invented. */
class WasteBookTest {
  private static final Instant NOW = Instant.parse("2026-01-14T12:00:00Z");
  private static final LocalDate TODAY = LocalDate.parse("2026-01-14");

  @TempDir Path home;
  private Wetside wetside;

  @BeforeEach
  void open() {
    wetside = Wetside.open(home, Clock.fixed(NOW, ZoneOffset.UTC));
    add("W1", WasteKind.SILVER);
    add("W2", WasteKind.OTHER);
  }

  @AfterEach
  void close() {
    wetside.close();
  }

  private void add(String name, WasteKind kind) {
    wetside.wasteBook().keepJugs().add(new Jug(name, kind, Volume.ofLitres(5)));
  }

  private FilledJug pour(String jug, String contents, String bath, double millilitres) {
    return wetside
        .wasteBook()
        .pourWaste()
        .byHand(
            jug,
            new PourWaste.ByHand(
                contents,
                bath.isEmpty() ? Optional.empty() : Optional.of(BathKind.fromWord(bath)),
                Volume.ofMillilitres(millilitres),
                ""))
        .jug();
  }

  private void bottle(String letter, String contents, BathKind bath, double millilitres) {
    wetside
        .addBottle()
        .add(
            BottleLabel.of(letter, contents, BottleRole.WORKING, bath, Volume.ofMillilitres(1000)),
            Volume.ofMillilitres(millilitres));
  }

  /** Row "used fixer, silver" of capacity.csv: 3 to 6 g/L (CH-S56), low confidence. */
  @Test
  void silverIsTheStatedRangeOfUsedFixerWithItsSourceAndConfidence() {
    pour("W1", "F-24", "fixer", 1500);
    FilledJug jug = pour("W1", "wash water", "", 500);
    SilverEstimate estimate = UsedFixer.silver().in(jug.inside());
    assertThat(estimate.leastGrams()).isCloseTo(4.5, within(1e-9));
    assertThat(estimate.mostGrams()).isCloseTo(9.0, within(1e-9));
    assertThat(estimate.words())
        .contains(
            "roughly 4.5 to 9.0 g", "CH-S56", "low confidence", "0.50 L besides are left out");
  }

  @Test
  void aJugWithoutFixerHasNoEstimate() {
    FilledJug jug = pour("W2", "D-76", "developer", 600);
    assertThat(UsedFixer.silver().in(jug.inside()).words()).startsWith("no estimate of silver");
  }

  /** The combinations of the model, by what is poured into which jug. */
  @ParameterizedTest
  @CsvSource({
    "F-24, fixer, household bleach, '', hypochlorite",
    "household bleach, '', rapid fixer, fixer, chloramine",
    "SB-1, stop bath, household bleach, '', chlorine",
    "SB-8, stop bath, ferricyanide bleach, bleach, hydrogen cyanide",
    "ferricyanide bleach, bleach, SB-1, stop bath, hydrogen cyanide",
    "ST-1, '', SB-1, stop bath, hydrogen sulfide",
    "PLAIN-HYPO, fixer, SB-1, stop bath, sulfur dioxide",
    "glacial acetic acid, '', water, '', boiling"
  })
  void whatMustNotMeetIsRefusedAndNothingIsWritten(
      String first, String firstBath, String second, String secondBath, String reason) {
    String named = first.equals("ST-1") ? "sodium sulfide solution" : first;
    pour("W2", named, firstBath, 100);
    assertThatThrownBy(() -> pour("W2", second, secondBath, 100))
        .isInstanceOf(BadValueException.class)
        .satisfies(refused -> assertThat(refused.getMessage()).contains(named, second, "CH-S"))
        .satisfies(
            refused ->
                assertThat(refused.getMessage())
                    .containsAnyOf(reason, "chlorine-type", "chloramine"));
    assertThat(wetside.wasteBook().keepJugs().of("W2").inside()).hasSize(1);
  }

  @Test
  void anAcidFixerAndAStopMayMeetOnceThereIsSulfite() {
    pour("W2", "F-24", "fixer", 300);
    assertThat(pour("W2", "SB-1", "stop bath", 300).inside()).hasSize(2);
  }

  @Test
  void whatBelongsElsewhereOrDoesNotFitIsRefusedWithTheLimit() {
    assertThatThrownBy(() -> pour("W1", "D-76", "developer", 100))
        .hasMessageContainingAll("D-76", "jug W1", "silver-bearing", "developer waste");
    assertThatThrownBy(() -> pour("W1", "F-24", "fixer", 5001))
        .hasMessageContainingAll("5001 mL", "5000 mL");
    assertThatThrownBy(() -> pour("W1", "F-24", "fixer", 0)).hasMessageContaining("above 0 mL");
    assertThatThrownBy(() -> pour("W9", "F-24", "fixer", 10)).hasMessageContaining("W9");
    assertThatThrownBy(() -> add("w1", WasteKind.STOP)).hasMessageContaining("choose another");
  }

  @Test
  void aBottleIsDiscardedIntoAJugInOneTransaction() {
    bottle("F", "F-24", BathKind.FIXER, 800);
    bottle("S", "SB-1", BathKind.STOP_BATH, 500);
    wetside.wasteBook().pourWaste().fromBottle("W1", "F", Optional.empty(), "");
    assertThat(wetside.wasteBook().keepJugs().of("W1").filled())
        .isEqualTo(Volume.ofMillilitres(800));
    assertThat(wetside.listBottles().find("F")).isEmpty();

    assertThatThrownBy(
            () -> wetside.wasteBook().pourWaste().fromBottle("W1", "S", Optional.empty(), ""))
        .hasMessageContaining("silver-bearing");
    assertThat(wetside.listBottles().find("S").orElseThrow().left())
        .isEqualTo(Volume.ofMillilitres(500));
    wetside
        .wasteBook()
        .pourWaste()
        .fromBottle("W2", "S", Optional.of(Volume.ofMillilitres(200)), "");
    assertThat(wetside.listBottles().find("S").orElseThrow().left())
        .isEqualTo(Volume.ofMillilitres(300));
  }

  @Test
  void whatNothingIsKnownAboutIsSaid() {
    PourWaste.Outcome outcome =
        wetside
            .wasteBook()
            .pourWaste()
            .byHand(
                "W2",
                new PourWaste.ByHand(
                    "brew of a friend", Optional.empty(), Volume.ofMillilitres(50), ""));
    assertThat(outcome.unknown()).containsExactly("brew of a friend");
  }

  @Test
  void aJugIsHandedInOnADayThatCanBe() {
    assertThatThrownBy(() -> handIn(TODAY)).hasMessageContaining("nothing in it");
    pour("W1", "F-24", "fixer", 900);
    assertThatThrownBy(() -> handIn(TODAY.plusDays(1))).hasMessageContaining("not after today");
    assertThatThrownBy(() -> handIn(TODAY.minusDays(1)))
        .hasMessageContaining("not before the last pouring");
    assertThatThrownBy(() -> wetside.wasteBook().handIn().handIn("W1", TODAY, " ", ""))
        .hasMessageContaining("to whom");
    assertThat(handIn(TODAY).filled()).isEqualTo(Volume.ZERO);
    assertThat(wetside.wasteBook().keepJugs().of("W1").handedIn())
        .singleElement()
        .satisfies(one -> assertThat(one.volume()).isEqualTo(Volume.ofMillilitres(900)));
  }

  private FilledJug handIn(LocalDate on) {
    return wetside.wasteBook().handIn().handIn("W1", on, "the collection at the quay", "");
  }

  @Test
  void aPouringThatWasNotOneIsTakenBackWithAReason() {
    FilledJug jug = pour("W1", "F-24", "fixer", 900);
    long line = jug.inside().get(0).line();
    assertThatThrownBy(() -> wetside.wasteBook().pourWaste().takeBack("W1", line, " "))
        .hasMessageContaining("reason");
    assertThat(wetside.wasteBook().pourWaste().takeBack("W1", line, "typed twice").filled())
        .isEqualTo(Volume.ZERO);
    assertThatThrownBy(() -> wetside.wasteBook().pourWaste().takeBack("W1", line, "again"))
        .hasMessageContaining("none of those");
  }

  /** Whatever is poured, taken back and handed in: what is in and what went out is what went in. */
  @Test
  void noMillilitreIsLostInAnyOrder() {
    SplittableRandom random = new SplittableRandom(12);
    double poured = 0;
    for (int i = 0; i < 200; i++) {
      FilledJug jug = wetside.wasteBook().keepJugs().of("W1");
      int act = random.nextInt(10);
      if (act == 0 && !jug.inside().isEmpty()) {
        handIn(TODAY);
      } else if (act == 1 && !jug.inside().isEmpty()) {
        var one = jug.inside().get(random.nextInt(jug.inside().size()));
        wetside.wasteBook().pourWaste().takeBack("W1", one.line(), "not so");
        poured -= one.volume().millilitres();
      } else {
        int volume = 1 + random.nextInt(900);
        if (volume <= jug.room().millilitres()) {
          pour("W1", "F-24", "fixer", volume);
          poured += volume;
        } else {
          assertThatThrownBy(() -> pour("W1", "F-24", "fixer", volume))
              .isInstanceOf(BadValueException.class);
        }
      }
    }
    FilledJug jug = wetside.wasteBook().keepJugs().of("W1");
    double out = jug.handedIn().stream().mapToDouble(one -> one.volume().millilitres()).sum();
    assertThat(jug.filled().millilitres() + out).isCloseTo(poured, within(1e-6));
    List<FilledJug> all = wetside.wasteBook().keepJugs().all();
    assertThat(all).extracting(one -> one.jug().name()).containsExactly("W1", "W2");
  }
}
