package org.wetside.reference;

import java.util.List;
import java.util.Optional;

/**
 * One cited file. On top, lines with {@code #}: what the file holds, then for each column of
 * numbers its unit and plausible range ({@link ReferenceColumn}). Then a header and rows; a test
 * walks every row of every file. Each row ends with the same four cells:
 *
 * <ul>
 *   <li>{@code source}: ids of {@code sources.csv}, parted by blanks, the one relied on first;
 *   <li>{@code locator}: page, table or figure there; may be empty;
 *   <li>{@code standing}: a word of {@link org.wetside.core.source.Standing};
 *   <li>{@code note}: limits and disagreements; may be empty.
 * </ul>
 *
 * <p>A unit stands in the name of its column ({@code temperature_c}) or, where rows differ, in a
 * column {@code unit}.
 *
 * @param name path below this package without {@code .csv}, for example {@code baths/hazards}
 * @param about what the file holds, in words
 * @param columns what is said of its columns of numbers
 * @param header all columns in order
 * @param rows the rows in order
 */
public record ReferenceTable(
    String name,
    String about,
    List<ReferenceColumn> columns,
    List<String> header,
    List<ReferenceRow> rows) {

  /**
   * Reads a file.
   *
   * @throws IllegalArgumentException when there is none of that name
   */
  public static ReferenceTable open(String name) {
    CsvText text = CsvText.read(name);
    List<ReferenceColumn> columns =
        text.remarks().stream().map(ReferenceColumn::parse).flatMap(Optional::stream).toList();
    String about =
        String.join(" ", text.remarks().stream().filter(r -> !r.startsWith(":")).toList());
    return new ReferenceTable(
        name, about, columns, text.header(), text.lines().stream().map(ReferenceRow::new).toList());
  }
}
