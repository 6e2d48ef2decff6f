package org.wetside.app.shelf;

import java.util.List;
import java.util.Optional;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.store.Bottles;
import org.wetside.store.Database;

/** What stands on the shelf. */
public final class ListBottles {
  private final Database database;

  /** Over one home's database. */
  public ListBottles(Database database) {
    this.database = database;
  }

  /** Every bottle on the shelf, by letter. */
  public List<Bottle> all() {
    return database.read(session -> new Bottles(session).onShelf());
  }

  /** The bottle of that letter on the shelf. */
  public Optional<Bottle> find(String letter) {
    return database.read(session -> new Bottles(session).find(letter));
  }

  /** The last bottle of that letter that was ever there, on the shelf or off it. */
  public Optional<Bottle> findLast(String letter) {
    return database.read(session -> new Bottles(session).findLast(letter));
  }

  /** The whole ledger of the last bottle of that letter, oldest line first. */
  public List<LedgerLine> ledger(String letter) {
    return database.read(session -> new Bottles(session).ledger(letter));
  }

  /**
   * A page of the ledger of the last bottle of that letter, the newest line first.
   *
   * @param before only lines older than that; empty for the newest
   * @param most how many lines at most, above 0
   */
  public LedgerPage page(String letter, Optional<Long> before, int most) {
    return database.read(
        session ->
            LedgerPage.of(
                new Bottles(session).page(letter, before.orElse(Long.MAX_VALUE), most + 1), most));
  }
}
