package org.wetside.reference;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A resource as text: the remarks on its top, its header, its lines. */
record CsvText(String name, List<String> remarks, List<String> header, List<Line> lines) {

  /** Reads {@code <name>.csv} beside this class. */
  static CsvText read(String name) {
    String text = text(name);
    List<String> remarks = new ArrayList<>();
    int from = 0;
    while (from < text.length() && text.charAt(from) == '#') {
      int end = text.indexOf('\n', from);
      remarks.add(text.substring(from + 1, end).strip());
      from = end + 1;
    }
    List<String> header = List.of();
    Map<String, Integer> positions = new HashMap<>();
    List<Line> lines = new ArrayList<>();
    for (CsvRecord record : CsvReader.builder().ofCsvRecord(text.substring(from))) {
      if (header.isEmpty()) {
        header = List.copyOf(record.getFields());
        for (int i = 0; i < header.size(); i++) {
          positions.put(header.get(i), i);
        }
      } else if (record.getFieldCount() == header.size()) {
        lines.add(new Line(name, positions, record.getFields()));
      } else {
        throw new IllegalStateException(
            name + ".csv: a line has " + record.getFieldCount() + " cells: " + record.getFields());
      }
    }
    return new CsvText(name, List.copyOf(remarks), header, List.copyOf(lines));
  }

  private static String text(String name) {
    try (InputStream stream = CsvText.class.getResourceAsStream(name + ".csv")) {
      if (stream == null) {
        throw new IllegalArgumentException("there is no reference table " + name);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One line below the header. */
  record Line(String file, Map<String, Integer> positions, List<String> cells) {
    String cell(String column) {
      Integer position = positions.get(column);
      if (position == null) {
        throw new IllegalArgumentException(file + ".csv has no column " + column);
      }
      return cells.get(position);
    }
  }
}
