package org.wetside.store;

import java.util.Optional;
import org.wetside.core.bath.StockMinimum;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/** Minima of stock per roll that the user entered from leaflets, by developer in any case. */
public final class OwnStockMinima {
  private final Session session;

  /** Works in this reading or transaction. */
  public OwnStockMinima(Session session) {
    this.session = session;
  }

  /** The user's own minimum for a developer. */
  public Optional<StockMinimum> find(String developer) {
    return session.first(
        "SELECT * FROM stock_minimum WHERE developer = ?",
        row ->
            new StockMinimum(
                row.volume("per_roll_volume_ml"),
                Standing.PUBLISHED,
                Citation.of(row.text("source"))),
        developer.strip());
  }

  /** Writes a minimum, new or in place of the older one. */
  public void put(String developer, StockMinimum minimum) {
    session.change(
        "INSERT INTO stock_minimum (developer, per_roll_volume_ml, source) VALUES (?, ?, ?)"
            + " ON CONFLICT (developer) DO UPDATE SET"
            + " per_roll_volume_ml = excluded.per_roll_volume_ml, source = excluded.source",
        developer.strip(),
        minimum.perRoll(),
        minimum.citation().toString());
  }
}
