package org.wetside.store;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wetside.core.bath.BathKind;
import org.wetside.core.shelf.AfterPouring;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.shelf.BottleRole;
import org.wetside.core.shelf.BottleState;
import org.wetside.core.shelf.Storage;

/** Bottles as rows: what stands on each, and the state its ledger comes to. */
final class BottleRows {
  private static final String ON_SHELF = "SELECT * FROM bottle WHERE discarded = 0";

  private final Session session;
  private final LedgerRows rows;
  private final OpenMarkRows marks;

  BottleRows(Session session) {
    this.session = session;
    rows = new LedgerRows(session);
    marks = new OpenMarkRows(session);
  }

  /** Writes what stands on a new one; its ledger is still empty. */
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
    return new Kept(id, new Bottle(label, BottleState.NOTHING), TestLines.NONE);
  }

  /** Those on the shelf, by letter. */
  List<Kept> onShelf() {
    return session.list(ON_SHELF + " ORDER BY length(letter), letter", this::read);
  }

  /** By the id of its row. */
  Optional<Kept> of(long id) {
    return session.first("SELECT * FROM bottle WHERE id = ?", this::read, id);
  }

  /** The one of that letter on the shelf. */
  Optional<Kept> standing(String letter) {
    return session.first(ON_SHELF + " AND letter = ?", this::read, key(letter));
  }

  /** The last one of that letter that was ever there. */
  Optional<Kept> last(String letter) {
    return session.first(
        "SELECT * FROM bottle WHERE letter = ? ORDER BY id DESC LIMIT 1", this::read, key(letter));
  }

  /** Bottles of one letter follow each other: it is the last that was filled by then. */
  Optional<Kept> at(String letter, Instant since) {
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

  /** Writes the state beside its ledger. */
  void keep(Kept kept) {
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

  /** How a letter is written in its row. */
  static String key(String letter) {
    return letter.strip().toUpperCase(Locale.ROOT);
  }

  /** A bottle and the row it is kept in. */
  record Kept(long id, Bottle bottle, TestLines tests) {}
}
