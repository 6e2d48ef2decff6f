package org.wetside.app.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.Replenishing;
import org.wetside.core.shelf.ReuseTable;
import org.wetside.core.source.Standing;

/**
 * Replenishing and reuse of bottles on a real shelf. The most at once is 2 % (CH-S13 p.110), parts
 * are taken out before they are added (CH-S49), times by roll number are DV-T06 p.3.
 */
class CareForBathTest {
  private KeptShelf shelf;
  private CareForBath care;

  @BeforeEach
  void open(@TempDir Path home) {
    shelf = new KeptShelf(home);
    care = new CareForBath(shelf.database);
  }

  @AfterEach
  void close() {
    shelf.close();
  }

  private void developer(String letter, String contents, double millilitres) {
    shelf.bottle(letter, contents, BottleRole.WORKING, BathKind.DEVELOPER, millilitres);
  }

  /** 44 mL a roll, as typed, into a litre: 88 mL in five parts of 17.6 mL, each under 20 mL. */
  @Test
  void theRateThatWasSaidIsPartedSoThatNoPartIsMoreThanTwoPercent() {
    developer("D", "some soup", 1000);
    CareForBath.Answer answer =
        care.of("d", UnitOfUse.ofRolls(2), Optional.of(Volume.ofMillilitres(44)));
    assertThat(answer.letter()).isEqualTo("D");
    assertThat(answer.mostAtOnce().millilitres()).isCloseTo(20, within(1e-9));
    assertThat(answer.mostAtOnceSource()).contains("CH-S13");
    assertThat(answer.rate().orElseThrow().standing()).isEqualTo(Standing.MEASURED);
    Replenishing plan = answer.plan().orElseThrow();
    assertThat(plan.total().millilitres()).isCloseTo(88, within(1e-9));
    assertThat(plan.parts())
        .hasSize(5)
        .allSatisfy(
            part -> {
              assertThat(part.add().millilitres()).isCloseTo(17.6, within(1e-9));
              assertThat(part.out().millilitres()).isCloseTo(17.6, within(1e-9));
              assertThat(part.back().millilitres()).as("it was full").isZero();
            });
  }

  /** What the bottle lacks is made up from the jug, and no part lifts it over its mark. */
  @Test
  void aBottleBelowItsMarkIsFilledToIt() {
    developer("D", "some soup", 1000);
    new ChangeBottle(shelf.database, KeptShelf.CLOCK).take("D", Volume.ofMillilitres(30), "");
    Replenishing plan =
        care.of("D", UnitOfUse.ofRolls(1), Optional.of(Volume.ofMillilitres(40)))
            .plan()
            .orElseThrow();
    double level = 970;
    for (Replenishing.Part part : plan.parts()) {
      level += part.add().millilitres() + part.back().millilitres() - part.out().millilitres();
      assertThat(level).isLessThanOrEqualTo(1000 + 1e-9);
    }
    assertThat(level).isCloseTo(1000, within(1e-9));
    assertThat(plan.waste().millilitres()).isCloseTo(10, within(1e-9));
  }

  @Test
  void theRateOnFileIsTakenAndItsStandingIsSaid() {
    developer("D", "D-76", 2000);
    CareForBath.Rate rate =
        care.of("D", UnitOfUse.ofRolls(1), Optional.empty()).rate().orElseThrow();
    assertThat(rate.source()).contains("CH-S90");
    assertThat(rate.standing()).isEqualTo(Standing.FROM_MEMORY);
  }

  @Test
  void whatIsNotOnFileHasNoRateAndNoPlan() {
    developer("D", "some soup", 1000);
    CareForBath.Answer answer = care.of("D", UnitOfUse.ofRolls(1), Optional.empty());
    assertThat(answer.rate()).isEmpty();
    assertThat(answer.plan()).isEmpty();
    assertThat(answer.tables()).isEmpty();
  }

  /**
   * DV-T06 p.3, Fujidol E, Neopan 1600 in a litre: rolls 1 to 3 6:30, roll 4 7:00, roll 12 9:00.
   */
  @Test
  void theMakersTableGivesTheTimeOfTheNextRoll() {
    developer("E", "Fujidol E", 1000);
    assertThat(next("E")).isEqualTo(Duration.ofSeconds(390));
    shelf.film("E", 3);
    assertThat(next("E")).isEqualTo(Duration.ofMinutes(7));
  }

  /** The same film in half the volume counts twice; beyond roll 10 of SPD nothing is printed. */
  @Test
  void halfTheVolumeIsSpentTwiceAsFastAndATableHasAnEnd() {
    developer("E", "Fujidol E", 500);
    shelf.film("E", 2);
    assertThat(next("E")).as("the fifth, counted for a litre").isEqualTo(Duration.ofMinutes(7));
    developer("P", "Super Prodol (SPD)", 1000);
    shelf.film("P", 10);
    assertThat(answer("P")).isEqualTo(new ReuseTable.Ended(11, 10));
  }

  @Test
  void aBottleThatIsNotThereIsRefused() {
    assertThatThrownBy(() -> care.of("X", UnitOfUse.ofRolls(1), Optional.empty()))
        .isInstanceOf(BadValueException.class)
        .hasMessageContaining("none stands on the shelf");
  }

  private Duration next(String letter) {
    return ((ReuseTable.Known) answer(letter)).time();
  }

  private ReuseTable.Answer answer(String letter) {
    return care.of(letter, UnitOfUse.ofRolls(1), Optional.empty()).tables().get(0).answer();
  }
}
