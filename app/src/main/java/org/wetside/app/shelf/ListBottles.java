package org.wetside.app.shelf;

import java.util.List;
import java.util.Optional;
import org.wetside.core.bath.Bottle;
import org.wetside.core.bath.BottleEntry;
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

  /** The book of a bottle, oldest line first; empty when there is no such bottle. */
  public List<BottleEntry> book(String letter) {
    return database.read(session -> new Bottles(session).book(letter));
  }
}
