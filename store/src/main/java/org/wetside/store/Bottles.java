package org.wetside.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleMark;
import org.wetside.core.shelf.BottleState;
import org.wetside.core.shelf.FilmUse;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.core.shelf.PostedLine;
import org.wetside.store.BottleRows.Kept;

/**
 * The bottles and their ledgers. Lines are added and never changed; beside each ledger stands the
 * state it comes to, carried along in the same transaction, so that a shelf is read without its
 * history. {@link LedgerCheck} proves that both agree.
 */
public final class Bottles {
  private final Session session;
  private final LedgerRows rows;
  private final BottleRows bottles;
  private final RollMarkRows rolls;
  private final OpenMarkRows marks;

  /** Works in this reading or transaction. */
  public Bottles(Session session) {
    this.session = session;
    rows = new LedgerRows(session);
    bottles = new BottleRows(session);
    rolls = new RollMarkRows(session);
    marks = new OpenMarkRows(session);
  }

  /** Puts a bottle on the shelf with the first line of its ledger; its letter must be free. */
  public void add(BottleLabel label, Volume filled, Instant at) {
    post(bottles.insert(label), LedgerLine.byHand(at, "", new BottleEvent.Filled(filled)));
  }

  /** The bottles on the shelf, by letter. */
  public List<Bottle> onShelf() {
    return bottles.onShelf().stream().map(Kept::bottle).toList();
  }

  /** The bottle of that letter on the shelf. */
  public Optional<Bottle> find(String letter) {
    return bottles.standing(letter).map(Kept::bottle);
  }

  /** The last bottle of that letter that was ever there, on the shelf or off it. */
  public Optional<Bottle> findLast(String letter) {
    return bottles.last(letter).map(Kept::bottle);
  }

  /**
   * The bottle of that letter that was there at a moment: on the shelf, or discarded later.
   *
   * @param since a moment, for example the first pour of a run
   */
  public boolean wasThere(String letter, Instant since) {
    return bottles.at(letter, since).isPresent();
  }

  /** The whole ledger of the last bottle of that letter, oldest line first. */
  public List<LedgerLine> ledger(String letter) {
    return bottles
        .last(letter)
        .map(kept -> rows.all(kept.id()).stream().map(PostedLine::line).toList())
        .orElse(List.of());
  }

  /**
   * A page of the ledger of the last bottle of that letter, the newest line first.
   *
   * @param before only lines before this id; {@code Long.MAX_VALUE} for the newest
   * @param most how many lines at most
   */
  public List<PostedLine> page(String letter, long before, int most) {
    return bottles.last(letter).map(kept -> rows.page(kept.id(), before, most)).orElse(List.of());
  }

  /**
   * Adds a line by hand. A discarding line takes the bottle off the shelf and frees its letter.
   *
   * @throws StoreException when no bottle of that letter is on the shelf
   */
  public void enter(String letter, LedgerLine line) {
    enterAll(letter, List.of(line));
  }

  /**
   * Adds many lines by hand, the oldest first, and reads the bottle only once.
   *
   * @throws StoreException when no bottle of that letter is on the shelf, or a line comes after the
   *     one that takes it off
   */
  public void enterAll(String letter, List<LedgerLine> lines) {
    Kept kept = bottles.standing(letter).orElseThrow(() -> missing(letter));
    for (LedgerLine line : lines) {
      if (kept.bottle().discarded()) {
        throw missing(letter);
      }
      kept = written(kept, line);
    }
    bottles.keep(kept);
  }

  /** Notes that rolls of a bottle were fixed again; it may be discarded. */
  public void refixed(long bottle, LedgerLine line) {
    bottles.of(bottle).ifPresent(kept -> post(kept, line));
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
    Kept kept = bottles.at(letter, since).orElseThrow(() -> missing(letter));
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
    post(kept, new LedgerLine(at, run, note, new BottleEvent.Used(covered, film)));
    return shortBy;
  }

  /** Pours used liquid back; inside the same transaction as its {@link #debit}. */
  public void giveBack(String letter, Volume poured, String run, Instant since, Instant at) {
    Kept kept = bottles.at(letter, since).orElseThrow(() -> missing(letter));
    if (!kept.bottle().discarded()) {
      post(kept, new LedgerLine(at, run, "", new BottleEvent.PouredBack(poured)));
    }
  }

  /** Undoes a {@link #debit} and its {@link #giveBack}: the end of the run was taken back. */
  public void undoUse(
      String letter, Volume back, List<FilmUse> film, String run, Instant since, Instant at) {
    Kept kept = bottles.at(letter, since).orElseThrow(() -> missing(letter));
    Volume there = kept.bottle().discarded() ? Volume.ZERO : back;
    post(kept, new LedgerLine(at, run, "", new BottleEvent.UseUndone(there, film)));
  }

  /**
   * Marks a bottle for a run; inside the transaction that stores the mishap. A bottle that is not
   * on the shelf, or no longer, is left alone.
   *
   * @param since when the run first poured
   */
  public void mark(
      String letter, BottleMark mark, String why, String run, Instant since, Instant at) {
    bottles
        .at(letter, since)
        .filter(kept -> !kept.bottle().discarded())
        .ifPresent(kept -> post(kept, new LedgerLine(at, run, why, new BottleEvent.Marked(mark))));
  }

  /** Lifts what {@link #mark} wrote for that run, where nobody has answered it meanwhile. */
  public void unmark(
      String letter, BottleMark mark, String why, String run, Instant since, Instant at) {
    bottles
        .at(letter, since)
        .filter(
            kept ->
                kept.bottle().state().marks().stream()
                    .anyMatch(seen -> seen.mark() == mark && seen.run().equals(run)))
        .ifPresent(
            kept -> post(kept, new LedgerLine(at, run, why, new BottleEvent.MarkLifted(mark))));
  }

  /** Folds every ledger anew and keeps what it comes to: after a migration. */
  void refoldAll() {
    for (Kept kept : bottles.everyOne()) {
      marks.clear(kept.id());
      BottleState state = BottleState.NOTHING;
      TestLines tests = TestLines.NONE;
      List<PostedLine> ledger = rows.all(kept.id());
      BottleLabel label = kept.bottle().label();
      for (PostedLine posted : ledger) {
        BottleState next = state.after(posted.line(), label.bath());
        tests = tests.after(state, next, posted.id());
        marks.after(kept.id(), state, next, posted.id(), posted.line());
        state = next;
      }
      bottles.keep(new Kept(kept.id(), new Bottle(label, state), tests));
      rolls.rewrite(kept.id(), label.bath(), ledger.stream().map(PostedLine::line).toList());
    }
  }

  private void post(Kept kept, LedgerLine line) {
    bottles.keep(written(kept, line));
  }

  /** Writes a line and what it says of rolls and marks; the state is still to be kept. */
  private Kept written(Kept kept, LedgerLine line) {
    Bottle before = kept.bottle();
    Bottle after = before.after(line);
    long id = rows.write(kept.id(), line, after.left());
    rolls.after(kept.id(), before, id, line);
    marks.after(kept.id(), before.state(), after.state(), id, line);
    if (line.what() instanceof BottleEvent.Opened opened) {
      session.change("UPDATE bottle SET opened_on = ? WHERE id = ?", opened.day(), kept.id());
    }
    TestLines tests = kept.tests().after(before.state(), after.state(), id);
    return new Kept(kept.id(), after, tests);
  }

  private static StoreException missing(String letter) {
    return new StoreException(
        "no bottle " + BottleRows.key(letter) + " is on the shelf; nothing was changed");
  }
}
