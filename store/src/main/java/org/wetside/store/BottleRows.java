package org.wetside.store;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wetside.core.bath.BathKind;
import org.wetside.core.shelf.AfterPouring;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.BottleState;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.core.shelf.PostedLine;
import org.wetside.core.shelf.Storage;

/**
 * The rows that bottles are kept in. Every line of a ledger goes through {@link #post}, which
 * carries the state beside the ledger along; nothing else writes either.
 */
final class BottleRows {
  private static final String ON_SHELF = "SELECT * FROM bottle WHERE discarded = 0";

  private final Session session;
  private final LedgerRows rows;
  private final RollMarkRows rolls;
  private final OpenMarkRows marks;

  /** Works in this reading or transaction. */
  BottleRows(Session session) {
    this.session = session;
    rows = new LedgerRows(session);
    rolls = new RollMarkRows(session);
    marks = new OpenMarkRows(session);
  }

  /** A row for a bottle without a ledger yet. */
  Kept insert(BottleLabel label) {
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
    return new Kept(id, new Bottle(label, BottleState.NOTHING));
  }

  /** Those on the shelf, by letter. */
  List<Kept> onShelf() {
    return session.list(ON_SHELF + " ORDER BY length(letter), letter", this::read);
  }

  /** The one of that number, on the shelf or off it. */
  Optional<Kept> byId(long id) {
    return session.first("SELECT * FROM bottle WHERE id = ?", this::read, id);
  }

  /** Its ledger. */
  LedgerRows ledger() {
    return rows;
  }

  /** Folds every ledger anew and keeps what it comes to: after a migration. */
  void refoldAll() {
    for (Kept kept : everyOne()) {
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
      keep(new Kept(kept.id(), new Bottle(label, state), tests));
      rolls.rewrite(kept.id(), label.bath(), ledger.stream().map(PostedLine::line).toList());
    }
  }

  /** Adds a line and carries the state along. */
  void post(Kept kept, LedgerLine line) {
    keep(written(kept, line));
  }

  /**
   * Adds lines, the oldest first, and keeps the state once.
   *
   * @throws StoreException when a line comes after the one that takes the bottle off the shelf
   */
  void postAll(Kept kept, List<LedgerLine> lines) {
    Kept now = kept;
    for (LedgerLine line : lines) {
      if (now.bottle().discarded()) {
        throw missing(now.bottle().label().letter());
      }
      now = written(now, line);
    }
    keep(now);
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
    return new Kept(kept.id(), after, kept.tests().after(before.state(), after.state(), id));
  }

  private void keep(Kept kept) {
    BottleState state = kept.bottle().state();
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
        kept.tests().leader(),
        kept.tests().proof(),
        kept.tests().clearing(),
        kept.tests().baseline(),
        kept.id());
  }

  /** The one of that letter on the shelf. */
  Optional<Kept> kept(String letter) {
    return session.first(ON_SHELF + " AND letter = ?", this::read, key(letter));
  }

  /** The last of that letter, on the shelf or off it. */
  Optional<Kept> keptLast(String letter) {
    return session.first(
        "SELECT * FROM bottle WHERE letter = ? ORDER BY id DESC LIMIT 1", this::read, key(letter));
  }

  /** Bottles of one letter follow each other: it is the last that was filled by then. */
  Optional<Kept> keptAt(String letter, Instant since) {
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
    return session.list("SELECT * FROM bottle ORDER BY id", this::read);
  }

  private Kept read(Row row) {
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
    long id = row.whole("id");
    return new Kept(id, new Bottle(label, tests.state(row, rows, marks.of(id))), tests);
  }

  private static String key(String letter) {
    return letter.strip().toUpperCase(Locale.ROOT);
  }

  static StoreException missing(String letter) {
    return new StoreException("no bottle " + key(letter) + " is on the shelf; nothing was changed");
  }

  /** A bottle and the row it is kept in. */
  record Kept(long id, Bottle bottle, TestLines tests) {
    Kept(long id, Bottle bottle) {
      this(id, bottle, TestLines.NONE);
    }
  }
}
