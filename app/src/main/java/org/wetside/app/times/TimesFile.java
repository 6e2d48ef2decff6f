package org.wetside.app.times;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wetside.core.quantity.BadValueException;

/** The file in which people exchange times. */
final class TimesFile {
  private static final List<String> COLUMNS =
      List.of(
          "film",
          "developer",
          "dilution",
          "ei",
          "temp",
          "minutes",
          "vessel",
          "agitation",
          "contrast",
          "source");
  private static final String HEADER = String.join(",", COLUMNS);
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private TimesFile() {}

  /**
   * The text of a file.
   *
   * @throws BadValueException when it is not UTF-8
   */
  static String decode(byte[] bytes) {
    if (bytes.length >= 2
        && ((bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF)
            || (bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE))) {
      throw new BadValueException("file", "UTF-16 text", "save it as CSV in UTF-8");
    }
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException notUtf8) {
      throw new BadValueException("file", "text in another encoding", "save it as CSV in UTF-8");
    }
  }

  /**
   * The lines by row number, the header being row 1. A byte order mark at the beginning, as
   * spreadsheets write it, is passed over.
   *
   * @param problems gets every row that is not a line of the file
   * @throws BadValueException when the header is another one
   */
  static Map<Integer, OwnLine> read(String text, List<RowProblem> problems) {
    String bare = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    Map<Integer, OwnLine> lines = new LinkedHashMap<>();
    int row = 0;
    try {
      for (CsvRecord record : reader().ofCsvRecord(bare)) {
        row++;
        List<String> cells = record.getFields();
        if (row == 1) {
          checkHeader(cells);
        } else if (!cells.stream().allMatch(String::isBlank)) {
          if (cells.size() == COLUMNS.size()) {
            lines.put(row, line(cells));
          } else {
            problems.add(new RowProblem(row, "", count(cells)));
          }
        }
      }
    } catch (CsvParseException unreadable) {
      problems.add(new RowProblem(row + 1, "", "cannot be read: a quotation mark is not closed"));
    }
    if (row == 0) {
      throw new BadValueException("file", "empty", "its first row must be " + HEADER);
    }
    return lines;
  }

  /** Rows of any length: the wrong ones get a message of ours. */
  private static CsvReader.CsvReaderBuilder reader() {
    return CsvReader.builder()
        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
        .missingFieldStrategy(FieldMismatchStrategy.IGNORE);
  }

  private static String count(List<String> cells) {
    String hint = cells.size() > COLUMNS.size() ? "; put text with commas in quotation marks" : "";
    return "has " + cells.size() + " cells where " + COLUMNS.size() + " belong" + hint;
  }

  private static void checkHeader(List<String> cells) {
    List<String> found =
        cells.stream().map(cell -> cell.strip().toLowerCase(java.util.Locale.ROOT)).toList();
    if (found.equals(COLUMNS)) {
      return;
    }
    String given = String.join(",", cells);
    String how =
        given.contains(";")
            ? "its columns are parted by semicolons; part them by commas: "
            : "the first row must be ";
    throw new BadValueException("header of the file", given, how + HEADER);
  }

  private static OwnLine line(List<String> cells) {
    return new OwnLine(
        cells.get(0),
        cells.get(1),
        cells.get(2),
        cells.get(3),
        cells.get(4),
        cells.get(5),
        cells.get(6),
        cells.get(7),
        cells.get(8),
        cells.get(9));
  }

  static String write(List<OwnLine> lines) {
    StringWriter text = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().build(text)) {
      csv.writeRecord(COLUMNS);
      for (OwnLine line : lines) {
        csv.writeRecord(cells(line));
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException("writing to memory", impossible);
    }
    return text.toString();
  }

  private static List<String> cells(OwnLine line) {
    return List.of(
        line.film(),
        line.developer(),
        line.dilution(),
        line.ei(),
        line.temp(),
        line.minutes(),
        line.vessel(),
        line.agitation(),
        line.contrast(),
        line.source());
  }
}
