package org.wetside.acceptance.structure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every worked value that came with the data is asserted by a test, or waits for a named place. */
class CheckRowsTest {
  private static final Path ROOT = Path.of("..");
  private static final List<Path> FILES =
      List.of(
          ROOT.resolve("reference/src/main/resources/org/wetside/reference/checks/baths.csv"),
          ROOT.resolve(
              "reference/src/test/resources/org/wetside/reference/development/check_values.csv"));

  /** Rows of places that are not built yet. Whoever builds one takes its rows out of here. */
  private static final Map<String, List<String>> LATER =
      Map.of("reciprocity", List.of("K12", "K13", "K14"));

  private static final Pattern ID = Pattern.compile("^(CK\\d\\d|K\\d\\d),", Pattern.MULTILINE);

  @Test
  void noneIsForgotten() {
    TreeMap<String, String> places = new TreeMap<>();
    LATER.forEach((place, rows) -> rows.forEach(row -> places.put(row, place)));
    String tests = everyTest();
    TreeSet<String> open = new TreeSet<>();
    TreeSet<String> both = new TreeSet<>();
    for (String row : rows()) {
      boolean asserted = Pattern.compile("\\b" + row + "\\b").matcher(tests).find();
      if (!asserted && !places.containsKey(row)) {
        open.add(row);
      }
      if (asserted && places.containsKey(row)) {
        both.add(row);
      }
    }
    assertThat(open).as("rows that no test names and that wait for nothing").isEmpty();
    assertThat(both).as("rows that wait although a test names them").isEmpty();
    assertThat(rows()).containsAll(places.keySet());
  }

  private static Set<String> rows() {
    Set<String> rows = new TreeSet<>();
    for (Path file : FILES) {
      Matcher id = ID.matcher(text(file));
      while (id.find()) {
        rows.add(id.group(1));
      }
    }
    return rows;
  }

  private static String everyTest() {
    try (Stream<Path> files = Files.walk(ROOT)) {
      StringBuilder all = new StringBuilder();
      files
          .filter(file -> file.toString().contains("/src/test/java/"))
          .filter(file -> file.toString().endsWith("Test.java"))
          .filter(file -> !file.endsWith("CheckRowsTest.java"))
          .forEach(file -> all.append(text(file)));
      return all.toString();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
