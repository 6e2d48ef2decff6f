package org.wetside.app.times;

/**
 * Why a row cannot be kept.
 *
 * @param row number of the row in the file, the header being 1; 0 where there is only one
 * @param column column of the file or field of the form; empty when it concerns the whole row
 * @param message the thing, the value and the limit
 */
public record RowProblem(int row, String column, String message) {
  /** For example {@code row 4, temp: temperature "20" is refused: say the unit}. */
  public String text() {
    if (row == 0) {
      return message;
    }
    return "row " + row + (column.isEmpty() ? "" : ", " + column) + ": " + message;
  }
}
