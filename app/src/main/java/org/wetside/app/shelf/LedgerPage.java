package org.wetside.app.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.core.shelf.PostedLine;

/**
 * A part of a ledger, the newest line first.
 *
 * @param entries the lines
 * @param older what to ask for older lines by; empty at the beginning of the ledger
 */
public record LedgerPage(List<Entry> entries, Optional<Long> older) {
  /**
   * A line with what it changed.
   *
   * @param line the line
   * @param changeMillilitres how much more was in the bottle after it; negative for less
   * @param left what was in it then
   */
  public record Entry(LedgerLine line, double changeMillilitres, Volume left) {}

  public LedgerPage {
    entries = List.copyOf(entries);
  }

  /**
   * Of so many lines.
   *
   * @param lines one more than is shown where there are older ones, the newest first
   * @param most how many are shown
   */
  static LedgerPage of(List<PostedLine> lines, int most) {
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < Math.min(most, lines.size()); i++) {
      double before = i + 1 < lines.size() ? lines.get(i + 1).left().millilitres() : 0;
      PostedLine line = lines.get(i);
      entries.add(new Entry(line.line(), line.left().millilitres() - before, line.left()));
    }
    return new LedgerPage(
        entries, lines.size() > most ? Optional.of(lines.get(most - 1).id()) : Optional.empty());
  }
}
