package org.wetside.app.shelf;

import java.util.Optional;
import org.wetside.core.bath.StockMinimum;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;
import org.wetside.reference.StockMinima;
import org.wetside.store.Database;
import org.wetside.store.OwnStockMinima;

/** The maker's minimum of stock per roll: the user's own entry first, then what is on file. */
public final class KeepMinimum {
  private final Database database;

  /** Over one home's database. */
  public KeepMinimum(Database database) {
    this.database = database;
  }

  /** The minimum for a developer; empty is an open check, never a passed one. */
  public Optional<StockMinimum> find(String developer) {
    Optional<StockMinimum> own =
        database.read(session -> new OwnStockMinima(session).find(developer));
    return own.or(() -> StockMinima.open().find(developer));
  }

  /**
   * Keeps a minimum read in a leaflet.
   *
   * @param perRoll for one roll of 80 in²
   * @param source which leaflet; at least one word
   */
  public void put(String developer, Volume perRoll, String source) {
    if (developer.isBlank()) {
      throw new BadValueException("developer", developer, "name it as on the bottle");
    }
    if (source.isBlank()) {
      throw new BadValueException(
          "source of the minimum", source, "say which leaflet, and its year");
    }
    StockMinimum minimum =
        new StockMinimum(perRoll, Standing.PUBLISHED, Citation.of(source.strip()));
    database.change(session -> new OwnStockMinima(session).put(developer, minimum));
  }
}
