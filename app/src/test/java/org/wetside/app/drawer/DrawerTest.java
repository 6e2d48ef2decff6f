package org.wetside.app.drawer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.CannotDoException;
import org.wetside.app.Wetside;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollBatch;
import org.wetside.core.plan.RollLine;
import org.wetside.core.plan.RollState;
import org.wetside.core.quantity.BadValueException;

class DrawerTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-01-14T19:00:00Z"), ZoneOffset.UTC);

  private Wetside wetside;

  @BeforeEach
  void open(@TempDir Path home) {
    wetside = Wetside.open(home, CLOCK);
  }

  @AfterEach
  void close() {
    wetside.close();
  }

  private List<String> add(String lines) {
    return wetside.addRolls().lines(lines).orRefuse().stream().map(Roll::number).toList();
  }

  @Test
  void aRollWithoutANumberIsNumberedByYearUntilItsOwnerHasASeries() {
    assertThat(add("135 36 TRI-X 400 @400\n120 TRI-X 400")).containsExactly("26-001", "26-002");
    assertThat(add("TM-05 135 36 T-MAX 400 @800 \"harbour\"")).containsExactly("TM-05");
    assertThat(add("135 36 TRI-X 400\nTM-09 120 TRI-X 400\n120 TRI-X 400"))
        .containsExactly("TM-10", "TM-09", "TM-11");
  }

  @Test
  void whenOneLineIsWrongNoneIsTakenAndEachWrongOneIsNamed() {
    AddOutcome outcome =
        wetside.addRolls().lines("135 36 TRI-X 400\n\n135 99 TRI-X 400\n136 TRI-X 400");
    List<RollBatch.BadLine> bad = ((AddOutcome.Refused) outcome).lines();
    assertThat(bad).extracting(RollBatch.BadLine::number).containsExactly(3, 4);
    assertThat(bad.get(0).reason()).contains("99", "1 to 72");
    assertThatThrownBy(outcome::orRefuse)
        .hasMessageContaining("line 4")
        .hasMessageContaining("120");
    assertThat(wetside.findRolls().in(RollState.WAITING)).isEmpty();
    assertThatThrownBy(() -> add("# nothing\n")).isInstanceOf(BadValueException.class);
  }

  @Test
  void draftsWithATakenNumberAreRefusedTogether() {
    add("TM-01 135 TRI-X 400");
    assertThatThrownBy(
            () ->
                wetside
                    .addRolls()
                    .drafts(
                        List.of(
                            RollLine.parse("TM-02 135 TRI-X 400"),
                            RollLine.parse("tm-01 135 TRI-X 400"))))
        .hasMessageContaining("tm-01");
    assertThat(wetside.findRolls().in(RollState.WAITING)).hasSize(1);
  }

  @Test
  void aFilmIsIdentifiedOrItsNameKeptUntilOneIsChosen() {
    add("TM-01 135 TRI-X 400\nTM-02 135 T-MAX\nTM-03 135 Marsh 100");
    assertThat(code("TM-01")).contains("400TX");
    assertThat(code("TM-02")).isEmpty();
    assertThat(wetside.findFilm().candidates("T-MAX")).hasSizeGreaterThan(1);
    assertThat(code("TM-03")).isEmpty();
    assertThat(wetside.findFilm().candidates("Marsh 100")).isEmpty();
    String chosen = wetside.findFilm().candidates("T-MAX").get(0).code();
    wetside.changeRoll().change("TM-02", RollLine.parse("135 T-MAX"), Optional.of(chosen));
    assertThat(code("TM-02")).contains(chosen);
    wetside.changeRoll().change("TM-02", RollLine.parse("135 T-MAX \"pier\""), Optional.empty());
    assertThat(code("TM-02")).contains(chosen);
  }

  private Optional<String> code(String number) {
    return wetside.findRolls().byNumber(number).orElseThrow().filmCode();
  }

  @Test
  void aRollIsFoundByAnyWordAlsoAfterAChange() {
    add("TM-01 135 TRI-X 400 \"Harbour wall\" on 2026-01-03\nTM-02 120 T-MAX 100 \"wheel\"");
    assertThat(found("harb")).containsExactly("TM-01");
    assertThat(found("wheel max")).containsExactly("TM-02");
    wetside
        .changeRoll()
        .change("TM-01", RollLine.parse("AB-7 135 TRI-X 400 \"sluice\""), Optional.empty());
    assertThat(found("harbour")).isEmpty();
    assertThat(found("sluice")).containsExactly("AB-7");
    assertThat(wetside.findRolls().matching("sluice", Optional.of(RollState.FILED))).isEmpty();
  }

  private List<String> found(String words) {
    return wetside.findRolls().withWords(words).stream().map(Roll::number).toList();
  }

  @Test
  void onlyARollThatWaitsIsWithdrawnAndOnlyNegativesAreFiled() {
    add("TM-01 135 TRI-X 400");
    assertThatThrownBy(() -> wetside.fileRoll().file("TM-01", "page 3"))
        .isInstanceOf(CannotDoException.class)
        .hasMessageContaining("no negatives");
    wetside.withdrawRoll().withdraw("TM-01");
    assertThat(wetside.findRolls().matching("", Optional.empty())).isEmpty();
    assertThatThrownBy(() -> wetside.withdrawRoll().withdraw("TM-01"))
        .isInstanceOf(CannotDoException.class);
    wetside.withdrawRoll().putBack("TM-01");
    assertThat(wetside.findRolls().in(RollState.WAITING)).hasSize(1);
    assertThatThrownBy(() -> wetside.withdrawRoll().withdraw("TM-99"))
        .isInstanceOf(BadValueException.class);
  }

  @Test
  void aTakenNumberIsRefusedOnChange() {
    add("TM-01 135 TRI-X 400\nTM-02 135 TRI-X 400");
    assertThatThrownBy(
            () ->
                wetside
                    .changeRoll()
                    .change("TM-02", RollLine.parse("TM-01 135 TRI-X 400"), Optional.empty()))
        .hasMessageContaining("already");
  }

  @Test
  void aDayStillToComeIsRefusedAndNothingIsTaken() {
    assertThatThrownBy(() -> add("135 TRI-X 400\n135 TRI-X 400 on 2027-01-03"))
        .hasMessageContaining("2027-01-03")
        .hasMessageContaining("today is 2026-01-14");
    assertThat(wetside.findRolls().in(RollState.WAITING)).isEmpty();
  }
}
