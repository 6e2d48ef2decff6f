package org.wetside.app.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.app.waste.KeepJugs;
import org.wetside.app.waste.PourWaste;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.FixerPair;
import org.wetside.core.waste.Jug;
import org.wetside.core.waste.WasteKind;

/**
 * Two fixers after each other on a real shelf. That both go after the third turn is CH-S14 p.107,
 * said of paper.
 */
class TurnFixersTest {
  private KeptShelf shelf;
  private static final Emptying DOWN = new EmptyUnsaid(KeptShelf.CLOCK);

  private TurnFixers turn;

  @BeforeEach
  void open(@TempDir Path home) {
    shelf = new KeptShelf(home);
    turn = new TurnFixers(shelf.database, KeptShelf.CLOCK);
    for (String letter : new String[] {"F", "G", "H", "I", "J"}) {
      shelf.bottle(letter, "some fixer", BottleRole.WORKING, BathKind.FIXER, 1000);
    }
  }

  @AfterEach
  void close() {
    shelf.close();
  }

  @Test
  void theSecondMovesDownAndAFreshOneComesBehindIt() {
    turn.pair("f", "g");
    assertThat(turn.turn("G", Optional.of("h"), DOWN))
        .isEqualTo(new FixerPair.MoveDown("F", "G", 1));
    assertThat(turn.all()).containsExactly(new FixerPair("G", "H", 1));
    assertThat(shelf.list().find("F")).as("discarded").isEmpty();
    assertThat(words("F")).endsWith("discarded");
    assertThat(words("G")).endsWith("moved down");
  }

  @Test
  void afterThreeTurnsBothAreDiscarded() {
    turn.pair("F", "G");
    turn.turn("F", Optional.of("H"), DOWN);
    turn.turn("G", Optional.of("I"), DOWN);
    assertThat(turn.turn("H", Optional.of("J"), DOWN))
        .isEqualTo(new FixerPair.MoveDown("H", "I", 3));
    assertThat(turn.of("I").orElseThrow().next()).isEqualTo(new FixerPair.DiscardBoth("I", "J"));
    assertThat(turn.turn("I", Optional.empty(), DOWN))
        .isEqualTo(new FixerPair.DiscardBoth("I", "J"));
    assertThat(turn.all()).isEmpty();
    assertThat(shelf.list().all()).isEmpty();
  }

  @Test
  void whatCannotBeIsRefusedAndNothingChanges() {
    shelf.bottle("D", "some soup", BottleRole.WORKING, BathKind.DEVELOPER, 1000);
    shelf.bottle("C", "some fixer", BottleRole.CONCENTRATE, BathKind.FIXER, 1000);
    refused(() -> turn.pair("F", "f"), "it is the first one");
    refused(() -> turn.pair("F", "D"), "no fixer of working strength");
    refused(() -> turn.pair("F", "C"), "no fixer of working strength");
    refused(() -> turn.pair("F", "X"), "none of that letter");
    turn.pair("F", "G");
    refused(() -> turn.pair("H", "G"), "already one of a pair");
    refused(() -> turn.turn("H", Optional.of("I"), DOWN), "in no pair of fixers");
    refused(() -> turn.turn("F", Optional.empty(), DOWN), "say the letter");
    refused(() -> turn.turn("F", Optional.of("G"), DOWN), "already one of a pair");
    shelf.film("H", 1);
    refused(() -> turn.turn("F", Optional.of("H"), DOWN), "film has already gone through it");
    assertThat(turn.all()).containsExactly(new FixerPair("F", "G", 0));
    assertThat(shelf.list().find("F")).isPresent();
  }

  /** What is discarded goes into the jug with its silver, and the pair goes on with its count. */
  @Test
  void theSpentOneGoesIntoTheJugAndThePairGoesOn() {
    KeepJugs jugs = new KeepJugs(() -> shelf.database, KeptShelf.CLOCK);
    jugs.add(new Jug("W", WasteKind.SILVER, Volume.ofMillilitres(5000)));
    Emptying intoW = new PourWaste(() -> shelf.database, KeptShelf.CLOCK).into("W");
    turn.pair("F", "G");
    turn.turn("F", Optional.of("H"), intoW);
    assertThat(jugs.of("W").inside())
        .singleElement()
        .satisfies(
            line -> {
              assertThat(line.bottle()).isEqualTo("F");
              assertThat(line.volume().millilitres()).isEqualTo(1000);
            });
    assertThat(turn.all()).containsExactly(new FixerPair("G", "H", 1));
    assertThat(words("F")).endsWith("discarded");
  }

  @Test
  void aJugThatDoesNotTakeItLeavesThePairAsItWas() {
    KeepJugs jugs = new KeepJugs(() -> shelf.database, KeptShelf.CLOCK);
    jugs.add(new Jug("S", WasteKind.SILVER, Volume.ofMillilitres(500)));
    Emptying tooSmall = new PourWaste(() -> shelf.database, KeptShelf.CLOCK).into("S");
    turn.pair("F", "G");
    refused(() -> turn.turn("F", Optional.of("H"), tooSmall), "holds 500 mL");
    assertThat(turn.all()).containsExactly(new FixerPair("F", "G", 0));
    assertThat(shelf.list().find("F")).isPresent();
    assertThat(jugs.of("S").inside()).isEmpty();
  }

  private List<String> words(String letter) {
    return shelf.list().ledger(letter).stream().map(line -> line.what().word()).toList();
  }

  private static void refused(Runnable act, String words) {
    assertThatThrownBy(act::run).isInstanceOf(BadValueException.class).hasMessageContaining(words);
  }
}
