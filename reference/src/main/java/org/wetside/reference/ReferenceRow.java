package org.wetside.reference;

import java.util.List;
import java.util.OptionalDouble;
import org.wetside.core.bath.BathKind;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/** One row of a cited file, with where it comes from and how far it is to be believed. */
public final class ReferenceRow {
  private final CsvText.Line line;

  ReferenceRow(CsvText.Line line) {
    this.line = line;
  }

  /** The cell as it stands; empty when nothing is said. */
  public String text(String column) {
    return line.cell(column);
  }

  /**
   * The cell as a number, in the unit that the column's name or the row's unit says.
   *
   * @throws NumberFormatException when it is empty or no number
   */
  public double number(String column) {
    return Double.parseDouble(line.cell(column));
  }

  /** The cell as a number, empty when nothing is said. */
  public OptionalDouble maybeNumber(String column) {
    return text(column).isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(number(column));
  }

  /** All sources cited, the one relied on first. */
  public List<String> sourceIds() {
    return List.of(line.cell("source").split(" "));
  }

  /** The source relied on, with page or table. */
  public Citation citation() {
    return new Citation(sourceIds().get(0), line.cell("locator"));
  }

  /** How the value is known. */
  public Standing standing() {
    return Standing.fromWord(line.cell("standing"));
  }

  /** Whether the column {@code baths} names that kind, or every one by {@code *}. */
  boolean isFor(BathKind kind) {
    List<String> kinds = List.of(text("baths").split("\\|", -1));
    return kinds.contains("*") || kinds.contains(kind.word());
  }

  /** Limits and disagreements; may be empty. */
  public String note() {
    return line.cell("note");
  }

  /** The cells, for messages. */
  @Override
  public String toString() {
    return line.cells().toString();
  }
}
