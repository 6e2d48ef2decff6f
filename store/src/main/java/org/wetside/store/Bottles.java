package org.wetside.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wetside.core.bath.BathKind;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.AfterPouring;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleMark;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.BottleState;
import org.wetside.core.shelf.FilmUse;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.core.shelf.PostedLine;
import org.wetside.core.shelf.Storage;

/**
 * The bottles and their ledgers. Lines are added and never changed; beside each ledger stands the
 * state it comes to, carried along in the same transaction, so that a shelf is read without its
 * history. {@link LedgerCheck} proves that both agree.
 */
public final class Bottles {
  private static final String ON_SHELF = "SELECT * FROM bottle WHERE discarded = 0";

  private final Session session;
  private final LedgerRows rows;
  private final RollMarkRows marks;

  /** Works in this reading or transaction. */
  public Bottles(Session session) {
    this.session = session;
    rows = new LedgerRows(session);
    marks = new RollMarkRows(session);
  }

  /** Puts a bottle on the shelf with the first line of its ledger; its letter must be free. */
  public void add(BottleLabel label, Volume filled, Instant at) {
    long id =
        session.insert(
            "INSERT INTO bottle (letter, contents, role, bath, dilution, full_volume_ml,"
                + " after_pouring, storage, mixed_on, opened_on, batch, owner, note)"
                + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
            label.letter(),
            label.contents(),
            label.role().word(),
            label.bath().word(),
            label.dilution(),
            label.full(),
            label.use().word(),
            label.storage().word(),
            label.mixedOn(),
            label.openedOn(),
            label.batch(),
            label.owner(),
            label.note());
    post(
        new Kept(id, new Bottle(label, BottleState.NOTHING)),
        LedgerLine.byHand(at, "", new BottleEvent.Filled(filled)));
  }

  /** The bottles on the shelf, by letter. */
  public List<Bottle> onShelf() {
    return session.list(ON_SHELF + " ORDER BY length(letter), letter", row -> read(row).bottle());
  }

  /** The bottle of that letter on the shelf. */
  public Optional<Bottle> find(String letter) {
    return kept(letter).map(Kept::bottle);
  }

  /** The last bottle of that letter that was ever there, on the shelf or off it. */
  public Optional<Bottle> findLast(String letter) {
    return keptLast(letter).map(Kept::bottle);
  }

  /**
   * The bottle of that letter that was there at a moment: on the shelf, or discarded later.
   *
   * @param since a moment, for example the first pour of a run
   */
  public boolean wasThere(String letter, Instant since) {
    return keptAt(letter, since).isPresent();
  }

  /** The whole ledger of the last bottle of that letter, oldest line first. */
  public List<LedgerLine> ledger(String letter) {
    return keptLast(letter)
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
    return keptLast(letter).map(kept -> rows.page(kept.id(), before, most)).orElse(List.of());
  }

  /**
   * Adds a line by hand. A discarding line takes the bottle off the shelf and frees its letter.
   *
   * @throws StoreException when no bottle of that letter is on the shelf
   */
  public void enter(String letter, LedgerLine line) {
    post(kept(letter).orElseThrow(() -> missing(letter)), line);
  }

  /** Notes that rolls of a bottle were fixed again; it may be discarded. */
  public void refixed(long bottle, LedgerLine line) {
    session
        .first("SELECT * FROM bottle WHERE id = ?", this::read, bottle)
        .ifPresent(kept -> post(kept, line));
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
    Kept kept = keptAt(letter, since).orElseThrow(() -> missing(letter));
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
    Kept kept = keptAt(letter, since).orElseThrow(() -> missing(letter));
    if (!kept.bottle().discarded()) {
      post(kept, new LedgerLine(at, run, "", new BottleEvent.PouredBack(poured)));
    }
  }

  /** Undoes a {@link #debit} and its {@link #giveBack}: the end of the run was taken back. */
  public void undoUse(
      String letter, Volume back, List<FilmUse> film, String run, Instant since, Instant at) {
    Kept kept = keptAt(letter, since).orElseThrow(() -> missing(letter));
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
    keptAt(letter, since)
        .filter(kept -> !kept.bottle().discarded())
        .ifPresent(kept -> post(kept, new LedgerLine(at, run, why, new BottleEvent.Marked(mark))));
  }

  /** Lifts what {@link #mark} wrote for that run, where nobody has answered it meanwhile. */
  public void unmark(
      String letter, BottleMark mark, String why, String run, Instant since, Instant at) {
    keptAt(letter, since)
        .filter(
            kept ->
                kept.bottle().state().marks().stream()
                    .anyMatch(seen -> seen.mark() == mark && seen.run().equals(run)))
        .ifPresent(
            kept -> post(kept, new LedgerLine(at, run, why, new BottleEvent.MarkLifted(mark))));
  }

  /** Folds every ledger anew and keeps what it comes to: after a migration. */
  void refoldAll() {
    for (Kept kept : session.list("SELECT * FROM bottle ORDER BY id", this::read)) {
      BottleState state = BottleState.NOTHING;
      TestLines tests = TestLines.NONE;
      for (PostedLine posted : rows.all(kept.id())) {
        BottleState next = state.after(posted.line(), kept.bottle().label().bath());
        tests = tests.after(state, next, posted.id());
        state = next;
      }
      keep(kept.id(), state, tests);
      marks.rewrite(kept.id(), kept.bottle().label().bath(), ledgerOf(kept.id()));
    }
  }

  private List<LedgerLine> ledgerOf(long id) {
    return rows.all(id).stream().map(PostedLine::line).toList();
  }

  private void post(Kept kept, LedgerLine line) {
    Bottle before = kept.bottle();
    Bottle after = before.after(line);
    long id = rows.write(kept.id(), line, after.left());
    marks.after(kept.id(), before, id, line);
    keep(kept.id(), after.state(), kept.tests().after(before.state(), after.state(), id));
    if (line.what() instanceof BottleEvent.Opened opened) {
      session.change("UPDATE bottle SET opened_on = ? WHERE id = ?", opened.day(), kept.id());
    }
  }

  private void keep(long id, BottleState state, TestLines tests) {
    session.change(
        "UPDATE bottle SET left_volume_ml = ?, basis_volume_ml = ?, film_rolls = ?, load_rolls = ?,"
            + " replenished_volume_ml = ?, lines = ?, discarded = ?, filled_at = ?, touched_at = ?,"
            + " leader_line = ?, proof_line = ?, clearing_line = ?, baseline_line = ?"
            + " WHERE id = ?",
        state.left(),
        state.basis(),
        state.film().rolls(),
        state.load().rolls(),
        state.replenished(),
        state.lines(),
        state.discarded(),
        state.filledAt(),
        state.lastTouched(),
        tests.leader(),
        tests.proof(),
        tests.clearing(),
        tests.baseline(),
        id);
  }

  private Optional<Kept> kept(String letter) {
    return session.first(ON_SHELF + " AND letter = ?", this::read, key(letter));
  }

  private Optional<Kept> keptLast(String letter) {
    return session.first(
        "SELECT * FROM bottle WHERE letter = ? ORDER BY id DESC LIMIT 1", this::read, key(letter));
  }

  /** Bottles of one letter follow each other: it is the last that was filled by then. */
  private Optional<Kept> keptAt(String letter, Instant since) {
    List<Kept> all =
        session.list("SELECT * FROM bottle WHERE letter = ? ORDER BY id", this::read, key(letter));
    Optional<Kept> found = Optional.empty();
    for (Kept kept : all) {
      BottleState state = kept.bottle().state();
      boolean goneBefore = state.discarded() && state.lastTouched().isBefore(since);
      boolean laterThanFound = found.isPresent() && state.filledAt().isAfter(since);
      if (!goneBefore && !laterThanFound) {
        found = Optional.of(kept);
      }
    }
    return found;
  }

  /** Every bottle that was ever there, with what its row says of it. */
  List<Kept> everyOne() {
    return new ArrayList<>(session.list("SELECT * FROM bottle ORDER BY id", this::read));
  }

  Kept read(Row row) {
    BottleLabel label =
        new BottleLabel(
            row.text("letter"),
            row.text("contents"),
            BottleRole.fromWord(row.text("role")),
            BathKind.fromWord(row.text("bath")),
            row.text("dilution"),
            row.volume("full_volume_ml"),
            AfterPouring.fromWord(row.text("after_pouring")),
            Storage.fromWord(row.text("storage")),
            row.maybeDay("mixed_on"),
            row.maybeDay("opened_on"),
            row.text("batch"),
            row.text("owner"),
            row.text("note"));
    TestLines tests = TestLines.read(row);
    return new Kept(row.whole("id"), new Bottle(label, tests.state(row, rows)), tests);
  }

  private static String key(String letter) {
    return letter.strip().toUpperCase(Locale.ROOT);
  }

  private static StoreException missing(String letter) {
    return new StoreException("no bottle " + key(letter) + " is on the shelf; nothing was changed");
  }

  /** A bottle and the row it is kept in. */
  record Kept(long id, Bottle bottle, TestLines tests) {
    Kept(long id, Bottle bottle) {
      this(id, bottle, TestLines.NONE);
    }
  }
}
