package org.wetside.acceptance.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Each entry of what only looks like a bug names its place and a test that exists. */
class NotBugsTest {
  private static final Path ROOT = Path.of("..");
  private static final Pattern HELD_BY =
      Pattern.compile("^Test: `(\\w+Test)(?:\\.(\\w+))?`\\.$", Pattern.MULTILINE);
  private static final Pattern PLACE =
      Pattern.compile("^Where: .*\\]\\([^)]+\\).*$", Pattern.MULTILINE);

  @Test
  void everyEntryNamesItsPlaceAndATestThatExists() throws IOException {
    List<Path> tests = tests();
    String[] entries = Files.readString(ROOT.resolve("docs/not-bugs.md")).split("\n## ", -1);
    assertThat(entries).hasSizeGreaterThan(5);
    for (int i = 1; i < entries.length; i++) {
      String entry = entries[i];
      assertThat(entry).containsPattern(PLACE);
      Matcher held = HELD_BY.matcher(entry);
      assertThat(held.find()).as(entry).isTrue();
      String file = held.group(1) + ".java";
      List<Path> found = tests.stream().filter(test -> test.endsWith(file)).toList();
      assertThat(found).as(entry).hasSize(1);
      if (held.group(2) != null) {
        assertThat(Files.readString(found.get(0))).contains("void " + held.group(2) + "(");
      }
    }
  }

  private static List<Path> tests() throws IOException {
    try (Stream<Path> files = Files.walk(ROOT)) {
      return files
          .filter(file -> file.toString().contains("/src/test/java/"))
          .filter(file -> file.toString().endsWith("Test.java"))
          .toList();
    }
  }
}
