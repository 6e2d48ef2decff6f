package org.wetside.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.core.shelf.PostedLine;

/**
 * The bottles and their ledgers. Lines are added and never changed; beside each ledger stands the
 * state it comes to, carried along in the same transaction, so that a shelf is read without its
 * history. {@link LedgerCheck} proves that both agree. What runs do is in {@link BottlesInRun}.
 */
public final class Bottles {
  private final BottleRows rows;

  /** Works in this reading or transaction. */
  public Bottles(Session session) {
    rows = new BottleRows(session);
  }

  /** Puts a bottle on the shelf with the first line of its ledger; its letter must be free. */
  public void add(BottleLabel label, Volume filled, Instant at) {
    rows.post(rows.insert(label), LedgerLine.byHand(at, "", new BottleEvent.Filled(filled)));
  }

  /** The bottles on the shelf, by letter. */
  public List<Bottle> onShelf() {
    return rows.onShelf().stream().map(BottleRows.Kept::bottle).toList();
  }

  /** The bottle of that letter on the shelf. */
  public Optional<Bottle> find(String letter) {
    return rows.kept(letter).map(BottleRows.Kept::bottle);
  }

  /** The last bottle of that letter that was ever there, on the shelf or off it. */
  public Optional<Bottle> findLast(String letter) {
    return rows.keptLast(letter).map(BottleRows.Kept::bottle);
  }

  /** The whole ledger of the last bottle of that letter, oldest line first. */
  public List<LedgerLine> ledger(String letter) {
    return rows.keptLast(letter)
        .map(kept -> rows.ledger().all(kept.id()).stream().map(PostedLine::line).toList())
        .orElse(List.of());
  }

  /**
   * A page of the ledger of the last bottle of that letter, the newest line first.
   *
   * @param before only lines before this id; {@code Long.MAX_VALUE} for the newest
   * @param most how many lines at most
   */
  public List<PostedLine> page(String letter, long before, int most) {
    return rows.keptLast(letter)
        .map(kept -> rows.ledger().page(kept.id(), before, most))
        .orElse(List.of());
  }

  /**
   * Adds a line by hand. A discarding line takes the bottle off the shelf and frees its letter.
   *
   * @throws StoreException when no bottle of that letter is on the shelf
   */
  public void enter(String letter, LedgerLine line) {
    rows.post(rows.kept(letter).orElseThrow(() -> BottleRows.missing(letter)), line);
  }

  /**
   * Adds many lines by hand, the oldest first, and reads the bottle only once.
   *
   * @throws StoreException when no bottle of that letter is on the shelf, or a line comes after the
   *     one that takes it off
   */
  public void enterAll(String letter, List<LedgerLine> lines) {
    rows.postAll(rows.kept(letter).orElseThrow(() -> BottleRows.missing(letter)), lines);
  }

  /** Notes that rolls of a bottle were fixed again; it may be discarded. */
  public void refixed(long bottle, LedgerLine line) {
    rows.byId(bottle).ifPresent(kept -> rows.post(kept, line));
  }
}
