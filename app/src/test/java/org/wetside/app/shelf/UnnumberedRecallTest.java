package org.wetside.app.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BathTest;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.FilmUse;
import org.wetside.core.shelf.RollMarks;
import org.wetside.store.Bottles;
import org.wetside.store.BottlesInRun;

/** Rolls of an old book that have no number: each is fixed again by itself. */
class UnnumberedRecallTest {
  @Test
  void oneFixedAgainLeavesTheOthersOnTheList(@TempDir Path home) {
    try (KeptShelf shelf = new KeptShelf(home)) {
      shelf.bottle("F", "some fixer", BottleRole.WORKING, BathKind.FIXER, 1000);
      shelf.database.change(
          session ->
              new BottlesInRun(session)
                  .debit(
                      "F",
                      Volume.ZERO,
                      List.of(
                          FilmUse.unnamed(UnitOfUse.ofRolls(1)),
                          FilmUse.unnamed(UnitOfUse.ofRolls(1)),
                          FilmUse.unnamed(UnitOfUse.ofRolls(1))),
                      "1",
                      KeptShelf.CLOCK.instant(),
                      KeptShelf.CLOCK.instant()));
      new ChangeBottle(shelf.database, KeptShelf.CLOCK).tested("F", BathTest.CLIP, false, "milky");
      ReadRecall recall = new ReadRecall(shelf.database, KeptShelf.CLOCK);
      for (int left = 3; left > 0; left--) {
        assertThat(recall.count()).isEqualTo(left);
        assertThat(folded(shelf)).isEqualTo(left);
        recall.refixed("", Optional.empty(), "in fresh fixer");
      }
      assertThat(recall.count()).isZero();
      assertThatThrownBy(() -> recall.refixed("", Optional.empty(), ""))
          .isInstanceOf(BadValueException.class)
          .hasMessageContaining("not to be fixed again");
    }
  }

  private static int folded(KeptShelf shelf) {
    return RollMarks.recalled(
            BathKind.FIXER, shelf.database.read(session -> new Bottles(session).ledger("F")))
        .size();
  }
}
