package org.wetside.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.wetside.core.bath.BathKind;
import org.wetside.core.bath.Bottle;
import org.wetside.core.bath.BottleEntry;
import org.wetside.core.bath.BottleLabel;
import org.wetside.core.bath.Strength;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.Volume;

/**
 * The bottles and their books. What is left in a bottle is always the fold over its book; lines are
 * added and never changed.
 */
public final class Bottles {
  private final Session session;

  /** Works in this reading or transaction. */
  public Bottles(Session session) {
    this.session = session;
  }

  /** Puts a bottle on the shelf with the first line of its book; its letter must be free. */
  public void add(BottleLabel label, Volume filled, Instant at) {
    long id =
        session.insert(
            "INSERT INTO bottle (letter, contents, strength, bath, full_volume_ml, one_shot,"
                + " mixed_on, opened_on, note) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
            label.letter(),
            label.contents(),
            label.strength().word(),
            label.bath().word(),
            label.full(),
            label.oneShot(),
            label.mixedOn(),
            label.openedOn(),
            label.note());
    write(
        id,
        new BottleEntry(BottleEntry.Kind.FILLED, filled.millilitres(), UnitOfUse.NONE, "", at, ""));
  }

  /** The bottles on the shelf, by letter. */
  public List<Bottle> onShelf() {
    return session.list(
        "SELECT * FROM bottle WHERE discarded = 0 ORDER BY length(letter), letter", this::read);
  }

  /** The bottle of that letter on the shelf. */
  public Optional<Bottle> find(String letter) {
    return session.first(
        "SELECT * FROM bottle WHERE discarded = 0 AND letter = ?", this::read, key(letter));
  }

  /** The book of the bottle of that letter on the shelf, oldest line first. */
  public List<BottleEntry> book(String letter) {
    return id(letter).map(this::entries).orElse(List.of());
  }

  /**
   * Takes liquid out for a run; to be called inside the transaction that ends the run. A book that
   * says less than was really taken never stops a run: the bottle is then empty.
   *
   * @param film film that it was used for
   * @param run identity of the run; empty when taken by hand
   * @return what the book was short of; zero as a rule
   * @throws StoreException when no bottle of that letter is on the shelf
   */
  public Volume debit(String letter, Volume taken, UnitOfUse film, String run, Instant at) {
    Volume left = find(letter).map(Bottle::left).orElseThrow(() -> missing(letter));
    Volume covered = left.compareTo(taken) < 0 ? left : taken;
    Volume shortBy = taken.minus(covered);
    String note =
        shortBy.millilitres() > 0
            ? "the book said "
                + Math.round(left.millilitres())
                + " mL, "
                + Math.round(taken.millilitres())
                + " mL were taken"
            : "";
    enter(
        letter,
        new BottleEntry(BottleEntry.Kind.TAKEN, -covered.millilitres(), film, run, at, note));
    return shortBy;
  }

  /** Pours used liquid back; inside the same transaction as its {@link #debit}. */
  public void giveBack(String letter, Volume poured, String run, Instant at) {
    enter(
        letter,
        new BottleEntry(
            BottleEntry.Kind.RETURNED, poured.millilitres(), UnitOfUse.NONE, run, at, ""));
  }

  /**
   * Adds a line to a bottle's book. A discarding line takes the bottle off the shelf and frees its
   * letter.
   *
   * @throws StoreException when no bottle of that letter is on the shelf
   */
  public void enter(String letter, BottleEntry entry) {
    long id = id(letter).orElseThrow(() -> missing(letter));
    write(id, entry);
    if (entry.kind() == BottleEntry.Kind.DISCARDED) {
      session.change("UPDATE bottle SET discarded = 1 WHERE id = ?", id);
    }
  }

  /** Notes the day a bottle was first opened. */
  public void open(String letter, LocalDate day, Instant at) {
    session.change(
        "UPDATE bottle SET opened_on = ? WHERE discarded = 0 AND letter = ?", day, key(letter));
    enter(letter, new BottleEntry(BottleEntry.Kind.OPENED, 0, UnitOfUse.NONE, "", at, ""));
  }

  private void write(long bottle, BottleEntry entry) {
    session.change(
        "INSERT INTO bottle_entry (bottle_id, kind, change_volume_ml, film_rolls, run, entered_at,"
            + " note) VALUES (?, ?, ?, ?, ?, ?, ?)",
        bottle,
        entry.kind().word(),
        entry.changeMillilitres(),
        entry.film().rolls(),
        entry.run(),
        entry.at(),
        entry.note());
  }

  private Optional<Long> id(String letter) {
    return session.first(
        "SELECT id FROM bottle WHERE discarded = 0 AND letter = ?",
        row -> row.whole("id"),
        key(letter));
  }

  private Bottle read(Row row) {
    BottleLabel label =
        new BottleLabel(
            row.text("letter"),
            row.text("contents"),
            Strength.fromWord(row.text("strength")),
            BathKind.fromWord(row.text("bath")),
            row.volume("full_volume_ml"),
            row.yes("one_shot"),
            row.maybeDay("mixed_on"),
            row.maybeDay("opened_on"),
            row.text("note"));
    return Bottle.of(label, entries(row.whole("id")));
  }

  private List<BottleEntry> entries(long bottle) {
    return session.list(
        "SELECT * FROM bottle_entry WHERE bottle_id = ? ORDER BY id",
        row ->
            new BottleEntry(
                BottleEntry.Kind.fromWord(row.text("kind")),
                row.number("change_volume_ml"),
                UnitOfUse.ofRolls(row.number("film_rolls")),
                row.text("run"),
                row.moment("entered_at"),
                row.text("note")),
        bottle);
  }

  private static String key(String letter) {
    return letter.strip().toUpperCase(java.util.Locale.ROOT);
  }

  private static StoreException missing(String letter) {
    return new StoreException("no bottle " + key(letter) + " is on the shelf; nothing was changed");
  }
}
