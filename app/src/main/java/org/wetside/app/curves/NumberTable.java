package org.wetside.app.curves;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.wetside.core.quantity.BadValueException;

/**
 * A table of two columns of numbers as CSV text: a header, then two numbers a line. Lines that are
 * empty or begin with {@code #} are passed over. It is read whole or not at all, and every bad line
 * is named.
 */
final class NumberTable {
  private static final String DIGITS_AROUND_COMMA = "[+-]?\\d+,\\d+";
  private static final String NUMBER = "[+-]?(\\d+\\.?\\d*|\\.\\d+)";

  private final String first;
  private final String second;
  private final String example;

  NumberTable(String first, String second, String example) {
    this.first = first;
    this.second = second;
    this.example = example;
  }

  /** Hands over each line's two cells; what the taker refuses is a bad line. */
  void read(String csv, BiConsumer<String, String> taker) {
    List<String> lines = csv.replace("\uFEFF", "").lines().toList();
    String header = first + "," + second;
    if (lines.isEmpty() || !lines.get(0).replace(" ", "").equalsIgnoreCase(header)) {
      throw new BadValueException(
          "first line of the table",
          lines.isEmpty() ? "nothing" : lines.get(0),
          "it must be the header " + header + ", parted by a comma; decimal marks are points");
    }
    rows(lines.subList(1, lines.size()), 2, taker);
  }

  /** The same for lines below a header, or without one; the first has that number. */
  void rows(List<String> lines, int firstNumber, BiConsumer<String, String> taker) {
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i).strip();
      if (!line.isEmpty() && !line.startsWith("#")) {
        try {
          take(line, taker);
        } catch (BadValueException refused) {
          wrong.add("line " + (firstNumber + i) + ": " + refused.getMessage());
        }
      }
    }
    if (!wrong.isEmpty()) {
      throw new BadValueException(
          "table", wrong.size() + " bad of " + lines.size() + " lines", String.join("; ", wrong));
    }
  }

  private void take(String line, BiConsumer<String, String> taker) {
    String[] cells = line.split(",", -1);
    if (cells.length == 2 && line.indexOf(';') < 0) {
      taker.accept(cells[0].strip(), cells[1].strip());
      return;
    }
    throw new BadValueException(
        "line",
        line,
        hasDecimalCommas(line)
            ? "its decimal mark is a comma: write a point, for example " + example
            : "write two numbers parted by a comma, for example " + example);
  }

  /** Whether more commas stand there than part two numbers, because one or both hold one. */
  private static boolean hasDecimalCommas(String line) {
    String bare = line.replace('\u2212', '-').replace("\"", "").replace(" ", "");
    return bare.matches(DIGITS_AROUND_COMMA + "[;,]" + NUMBER)
        || bare.matches(NUMBER + "[;,]" + DIGITS_AROUND_COMMA)
        || bare.matches(DIGITS_AROUND_COMMA + "[;,]" + DIGITS_AROUND_COMMA);
  }

  /** A cell as a number. */
  static double number(String thing, String cell, String example) {
    String plain = cell.replace('\u2212', '-');
    if (plain.matches(DIGITS_AROUND_COMMA)) {
      throw new BadValueException(
          thing, cell, "its decimal mark is a comma: write a point, for example " + example);
    }
    if (!plain.matches(NUMBER)) {
      throw new BadValueException(
          thing,
          cell.isEmpty() ? "nothing" : cell,
          "it must be a number of digits alone, for example " + example);
    }
    return Double.parseDouble(plain);
  }

  /** How many digits stand behind the point. */
  static int decimals(String cell) {
    int point = cell.indexOf('.');
    return point < 0 ? 0 : cell.length() - point - 1;
  }
}
