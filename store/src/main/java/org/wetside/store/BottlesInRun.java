package org.wetside.store;

import java.time.Instant;
import java.util.List;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.BottleMark;
import org.wetside.core.shelf.FilmUse;
import org.wetside.core.shelf.LedgerLine;

/**
 * What runs do to bottles, by the letter that stood on the shelf when the run first poured. All of
 * it happens inside the transaction of the run.
 */
public final class BottlesInRun {
  private final BottleRows rows;

  /** Works in this transaction. */
  public BottlesInRun(Session session) {
    rows = new BottleRows(session);
  }

  /**
   * The bottle of that letter that was there at a moment: on the shelf, or discarded later.
   *
   * @param since a moment, for example the first pour of a run
   */
  public boolean wasThere(String letter, Instant since) {
    return rows.keptAt(letter, since).isPresent();
  }

  /**
   * Takes liquid out for a run; to be called inside the transaction that ends the run. A ledger
   * that says less than was really taken never stops a run: the bottle is then empty. A bottle that
   * was discarded while the run went on keeps the film that went through it.
   *
   * @param film the rolls it was used for
   * @param run identity of the run
   * @param since when the run first poured
   * @return what the ledger was short of; zero as a rule
   * @throws StoreException when no bottle of that letter was there
   */
  public Volume debit(
      String letter, Volume taken, List<FilmUse> film, String run, Instant since, Instant at) {
    BottleRows.Kept kept = rows.keptAt(letter, since).orElseThrow(() -> BottleRows.missing(letter));
    Volume left = kept.bottle().left();
    Volume covered = left.compareTo(taken) < 0 ? left : taken;
    Volume shortBy = taken.minus(covered);
    String note =
        shortBy.millilitres() > 0
            ? "the ledger said "
                + Math.round(left.millilitres())
                + " mL, "
                + Math.round(taken.millilitres())
                + " mL were taken"
            : "";
    rows.post(kept, new LedgerLine(at, run, note, new BottleEvent.Used(covered, film)));
    return shortBy;
  }

  /** Pours used liquid back; inside the same transaction as its {@link #debit}. */
  public void giveBack(String letter, Volume poured, String run, Instant since, Instant at) {
    BottleRows.Kept kept = rows.keptAt(letter, since).orElseThrow(() -> BottleRows.missing(letter));
    if (!kept.bottle().discarded()) {
      rows.post(kept, new LedgerLine(at, run, "", new BottleEvent.PouredBack(poured)));
    }
  }

  /** Undoes a {@link #debit} and its {@link #giveBack}: the end of the run was taken back. */
  public void undoUse(
      String letter, Volume back, List<FilmUse> film, String run, Instant since, Instant at) {
    BottleRows.Kept kept = rows.keptAt(letter, since).orElseThrow(() -> BottleRows.missing(letter));
    Volume there = kept.bottle().discarded() ? Volume.ZERO : back;
    rows.post(kept, new LedgerLine(at, run, "", new BottleEvent.UseUndone(there, film)));
  }

  /**
   * Marks a bottle for a run; inside the transaction that stores the mishap. A bottle that is not
   * on the shelf, or no longer, is left alone.
   *
   * @param since when the run first poured
   */
  public void mark(
      String letter, BottleMark mark, String why, String run, Instant since, Instant at) {
    rows.keptAt(letter, since)
        .filter(kept -> !kept.bottle().discarded())
        .ifPresent(
            kept -> rows.post(kept, new LedgerLine(at, run, why, new BottleEvent.Marked(mark))));
  }

  /** Lifts what {@link #mark} wrote for that run, where nobody has answered it meanwhile. */
  public void unmark(
      String letter, BottleMark mark, String why, String run, Instant since, Instant at) {
    rows.keptAt(letter, since)
        .filter(
            kept ->
                kept.bottle().state().marks().stream()
                    .anyMatch(seen -> seen.mark() == mark && seen.run().equals(run)))
        .ifPresent(
            kept ->
                rows.post(kept, new LedgerLine(at, run, why, new BottleEvent.MarkLifted(mark))));
  }
}
