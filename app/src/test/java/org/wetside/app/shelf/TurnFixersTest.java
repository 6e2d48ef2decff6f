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
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.FixerPair;

/**
 * Two fixers after each other on a real shelf. That both go after the third turn is CH-S14 p.107,
 * said of paper.
 */
class TurnFixersTest {
  private KeptShelf shelf;
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
    assertThat(turn.turn("G", Optional.of("h"))).isEqualTo(new FixerPair.MoveDown("F", "G", 1));
    assertThat(turn.all()).containsExactly(new FixerPair("G", "H", 1));
    assertThat(shelf.list().find("F")).as("discarded").isEmpty();
    assertThat(words("F")).endsWith("discarded");
    assertThat(words("G")).endsWith("moved down");
  }

  @Test
  void afterThreeTurnsBothAreDiscarded() {
    turn.pair("F", "G");
    turn.turn("F", Optional.of("H"));
    turn.turn("G", Optional.of("I"));
    assertThat(turn.turn("H", Optional.of("J"))).isEqualTo(new FixerPair.MoveDown("H", "I", 3));
    assertThat(turn.of("I").orElseThrow().next()).isEqualTo(new FixerPair.DiscardBoth("I", "J"));
    assertThat(turn.turn("I", Optional.empty())).isEqualTo(new FixerPair.DiscardBoth("I", "J"));
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
    refused(() -> turn.turn("H", Optional.of("I")), "in no pair of fixers");
    refused(() -> turn.turn("F", Optional.empty()), "say the letter");
    refused(() -> turn.turn("F", Optional.of("G")), "already one of a pair");
    shelf.film("H", 1);
    refused(() -> turn.turn("F", Optional.of("H")), "film has already gone through it");
    assertThat(turn.all()).containsExactly(new FixerPair("F", "G", 0));
    assertThat(shelf.list().find("F")).isPresent();
  }

  private List<String> words(String letter) {
    return shelf.list().ledger(letter).stream().map(line -> line.what().word()).toList();
  }

  private static void refused(Runnable act, String words) {
    assertThatThrownBy(act::run).isInstanceOf(BadValueException.class).hasMessageContaining(words);
  }
}
