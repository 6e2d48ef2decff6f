package org.wetside.acceptance.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Links lead somewhere, decisions and the changelog keep their form. */
class DocumentsTest {
  private static final Path ROOT = Path.of("..");
  private static final Pattern LINK = Pattern.compile("\\]\\(([^)#: ]+)(#[^)]*)?\\)");
  private static final List<String> PARTS =
      List.of("## Context", "## Decision", "## Consequences", "## Confirmation");

  private static List<Path> documents() throws IOException {
    try (Stream<Path> top = Files.list(ROOT);
        Stream<Path> docs = Files.walk(ROOT.resolve("docs"))) {
      return Stream.concat(top, docs).filter(file -> file.toString().endsWith(".md")).toList();
    }
  }

  @Test
  void everyLinkLeadsToAFile() throws IOException {
    List<String> broken = new ArrayList<>();
    int links = 0;
    for (Path document : documents()) {
      Matcher link = LINK.matcher(Files.readString(document));
      while (link.find()) {
        links++;
        if (!Files.exists(document.resolveSibling(link.group(1)))) {
          broken.add(document + " to " + link.group(1));
        }
      }
    }
    assertThat(broken).isEmpty();
    assertThat(links).isGreaterThan(10);
  }

  @Test
  void everyDecisionHasItsFormAndIsListed() throws IOException {
    String list = Files.readString(ROOT.resolve("docs/decisions/README.md"));
    try (Stream<Path> files = Files.list(ROOT.resolve("docs/decisions"))) {
      for (Path file : files.filter(one -> !one.endsWith("README.md")).toList()) {
        String name = file.getFileName().toString();
        List<String> lines = Files.readAllLines(file);
        assertThat(lines.get(0)).as(name).matches("# " + name.substring(0, 4) + " \\S.*");
        assertThat(lines.stream().filter(line -> line.startsWith("## ")))
            .as(name)
            .containsExactlyElementsOf(PARTS);
        assertThat(list).contains("[" + lines.get(0).substring(2) + "](" + name + ")");
      }
    }
  }

  @Test
  void theChangelogIsAListUnderHeadings() throws IOException {
    List<String> lines = Files.readAllLines(ROOT.resolve("CHANGELOG.md"));
    assertThat(lines.get(0)).isEqualTo("# Changelog");
    assertThat(lines).contains("## Unreleased");
    assertThat(lines.subList(3, lines.size()))
        .allMatch(line -> line.isBlank() || line.matches("#{2,4} \\S.*|- \\S.*"));
  }
}
