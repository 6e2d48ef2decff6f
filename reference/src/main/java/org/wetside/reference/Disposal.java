package org.wetside.reference;

import java.util.List;
import org.wetside.core.bath.BathKind;

/** What is on file about where used baths go. Local rules decide, always. */
public final class Disposal {
  private final List<ReferenceRow> rows;

  private Disposal(List<ReferenceRow> rows) {
    this.rows = rows;
  }

  /** Reads the file. */
  public static Disposal open() {
    return new Disposal(ReferenceTable.open("baths/disposal").rows());
  }

  /** What is shown when a bath of that kind is discarded; never empty. */
  public List<Caution> of(BathKind kind) {
    return rows.stream()
        .filter(row -> row.isFor(kind))
        .map(
            row ->
                new Caution(
                    row.text("topic").equals("always") ? "" : row.text("topic"),
                    row.text("statement"),
                    "",
                    row.citation(),
                    row.standing()))
        .toList();
  }
}
