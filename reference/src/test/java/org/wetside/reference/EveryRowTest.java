package org.wetside.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetside.core.source.Source;
import org.wetside.core.source.Standing;

/** Walks every row of every cited file: known source, unit, plausible range, standing. */
class EveryRowTest {
  private static final Bibliography BIBLIOGRAPHY = Bibliography.open();
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");

  /** Sources that nobody read: a row that relies on one alone is from memory. */
  private static final Pattern NOT_READ = Pattern.compile("^MEMORY");

  /** Columns of digits that are names or patterns and not amounts. */
  private static final Set<String> NAMES =
      Set.of(
          "bits",
          "positions",
          "conductive",
          "at",
          "value",
          "printed_factor",
          "film",
          "reels",
          "filter",
          "statement");

  static Stream<String> tables() throws IOException, URISyntaxException {
    URL list = Objects.requireNonNull(ReferenceTable.class.getResource("sources.csv"));
    Path root = Objects.requireNonNull(Path.of(list.toURI()).getParent());
    try (Stream<Path> files = Files.walk(root)) {
      return files
          .filter(file -> file.toString().endsWith(".csv"))
          .map(
              file ->
                  root.relativize(file).toString().replace('\\', '/').replaceFirst("\\.csv$", ""))
          .filter(name -> !name.equals("sources"))
          // Words that are spoken and where their clips lie: no figures of the trade.
          .filter(name -> !name.startsWith("voice/"))
          .sorted()
          .toList()
          .stream();
    }
  }

  @ParameterizedTest
  @MethodSource("tables")
  void everyRowCitesKnownSources(String name) {
    ReferenceTable table = ReferenceTable.open(name);
    assertThat(table.rows()).as("%s has rows", name).isNotEmpty();
    for (ReferenceRow row : table.rows()) {
      assertThat(row.sourceIds())
          .as("%s: %s", name, row)
          .isNotEmpty()
          .allSatisfy(id -> assertThat(BIBLIOGRAPHY.find(id)).as(id).isPresent());
    }
  }

  @ParameterizedTest
  @MethodSource("tables")
  void everyRowSaysItsStandingAndNothingRecalledIsCalledPublished(String name) {
    for (ReferenceRow row : ReferenceTable.open(name).rows()) {
      Standing standing = row.standing();
      boolean anyRead =
          row.sourceIds().stream()
              .map(BIBLIOGRAPHY::find)
              .flatMap(Optional::stream)
              .map(Source::obtained)
              .anyMatch(obtained -> !NOT_READ.matcher(obtained).find());
      assertThat(standing).as("%s: %s", name, row).isNotEqualTo(Standing.MEASURED);
      if (!anyRead) {
        assertThat(standing).as("%s: %s", name, row).isEqualTo(Standing.FROM_MEMORY);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("tables")
  void everyNumberHasItsUnitAndLiesInItsPlausibleRange(String name) {
    ReferenceTable table = ReferenceTable.open(name);
    Map<String, List<ReferenceColumn>> declared =
        table.columns().stream().collect(Collectors.groupingBy(ReferenceColumn::name));
    assertThat(table.header()).as(name).containsAll(declared.keySet());
    for (ReferenceRow row : table.rows()) {
      declared.forEach(
          (column, ways) -> {
            if (!row.text(column).isEmpty()) {
              ReferenceColumn way = wayOf(table, ways, row);
              assertThat(row.number(column))
                  .as("%s: %s of %s", name, column, row)
                  .isBetween(way.least(), way.most());
            }
          });
    }
  }

  private static ReferenceColumn wayOf(
      ReferenceTable table, List<ReferenceColumn> ways, ReferenceRow row) {
    if (ways.size() == 1) {
      return ways.get(0);
    }
    return ways.stream()
        .filter(way -> way.unit().equals(row.text("unit")))
        .findFirst()
        .orElseThrow(
            () -> new AssertionError(table.name() + " declares no such unit: " + row.text("unit")));
  }

  @ParameterizedTest
  @MethodSource("tables")
  void everyColumnOfNumbersIsDeclared(String name) {
    ReferenceTable table = ReferenceTable.open(name);
    Set<String> declared =
        table.columns().stream().map(ReferenceColumn::name).collect(Collectors.toSet());
    for (String column : table.header()) {
      List<String> said =
          table.rows().stream().map(row -> row.text(column)).filter(c -> !c.isEmpty()).toList();
      boolean numbers = !said.isEmpty() && said.stream().allMatch(c -> NUMBER.matcher(c).matches());
      if (numbers && !NAMES.contains(column)) {
        assertThat(declared).as("%s: unit and range of %s", name, column).contains(column);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("tables")
  void everyFileSaysWhatItHoldsAndEndsWithTheSameFourColumns(String name) {
    ReferenceTable table = ReferenceTable.open(name);
    assertThat(table.about()).as(name).isNotBlank();
    assertThat(table.header()).as(name).endsWith("source", "locator", "standing", "note");
  }

  @Test
  void everySourceSaysHowItWasObtained() {
    assertThat(BIBLIOGRAPHY.all())
        .hasSizeGreaterThan(100)
        .allSatisfy(
            source -> {
              assertThat(source.title()).as(source.id()).isNotBlank();
              assertThat(source.obtained()).as(source.id()).isNotBlank();
            });
  }

  @Test
  void anUnknownTableIsRefusedByName() {
    assertThatThrownBy(() -> ReferenceTable.open("baths/beer"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("baths/beer");
  }
}
