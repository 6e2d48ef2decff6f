package org.wetside.app.density;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import org.wetside.core.quantity.BadValueException;

/**
 * Lines of cells with commas between, as they are pasted or stand in a file: a header may come
 * first, empty lines and those that begin with # are passed over, and every bad line is named.
 */
final class Lines {
  private static final int SHOWN = 5;

  private final String thing;
  private final Set<String> headers;

  /**
   * @param thing what the lines hold, for messages
   * @param headers the headers that are known, without blanks
   */
  Lines(String thing, Set<String> headers) {
    this.thing = thing;
    this.headers = Set.copyOf(headers);
  }

  /**
   * Reads the text whole or not at all.
   *
   * @throws BadValueException naming the bad lines
   */
  <T> List<T> read(String text, Function<String[], T> line) {
    List<String> lines = text.replace("\uFEFF", "").lines().toList();
    List<T> read = new ArrayList<>();
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      String bare = lines.get(i).strip();
      if (bare.isEmpty() || bare.startsWith("#") || (i == 0 && isHeader(bare))) {
        continue;
      }
      try {
        if (bare.indexOf(';') >= 0) {
          throw new BadValueException(
              thing, bare, "write commas between cells and points as decimal marks");
        }
        read.add(line.apply(bare.split(",", -1)));
      } catch (BadValueException refused) {
        wrong.add("line " + (i + 1) + ": " + refused.getMessage());
      }
    }
    if (!wrong.isEmpty()) {
      String more = wrong.size() > SHOWN ? "; and " + (wrong.size() - SHOWN) + " more" : "";
      throw new BadValueException(
          thing,
          wrong.size() + (wrong.size() == 1 ? " bad line" : " bad lines"),
          String.join("; ", wrong.subList(0, Math.min(SHOWN, wrong.size()))) + more);
    }
    if (read.isEmpty()) {
      throw new BadValueException(
          thing,
          "nothing",
          "write lines such as " + headers.stream().sorted().findFirst().orElse(""));
    }
    return read;
  }

  private boolean isHeader(String line) {
    return headers.contains(line.replace(" ", "").toLowerCase(Locale.ROOT));
  }
}
