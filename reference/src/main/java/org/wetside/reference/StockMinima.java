package org.wetside.reference;

import java.util.List;
import java.util.Optional;
import org.wetside.core.bath.StockMinimum;
import org.wetside.core.quantity.Volume;

/** Makers' minima of stock per roll that are on file. */
public final class StockMinima {
  private final List<ReferenceRow> rows;

  private StockMinima(List<ReferenceRow> rows) {
    this.rows = rows;
  }

  /** Reads the file. */
  public static StockMinima open() {
    return new StockMinima(
        ReferenceTable.open("baths/capacity").rows().stream()
            .filter(row -> row.text("what").equals("stock minimum"))
            .toList());
  }

  /** The minimum on file for that developer; empty is an open check, never a passed one. */
  public Optional<StockMinimum> find(String developer) {
    return rows.stream()
        .filter(row -> row.text("bath").equalsIgnoreCase(developer.strip()))
        .findFirst()
        .map(
            row ->
                new StockMinimum(
                    Volume.ofMillilitres(row.number("least")), row.standing(), row.citation()));
  }
}
