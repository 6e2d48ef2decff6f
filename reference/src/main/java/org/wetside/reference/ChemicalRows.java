package org.wetside.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;

/**
 * Finds the rows about the chemicals that a text names. Where one name lies within another (acetic
 * acid in glacial acetic acid) the longer is meant; where rows differ by strength, the one for the
 * strength that the text states, or all of them when it states none.
 */
final class ChemicalRows {
  private final List<ReferenceRow> rows;

  ChemicalRows(List<ReferenceRow> rows) {
    this.rows = rows;
  }

  private record Match(ReferenceRow row, int from, int to) {
    boolean isWithin(Match other) {
      return other.from <= from && to <= other.to && other.to - other.from > to - from;
    }

    boolean isSamePlace(Match other) {
      return other.from == from && other.to == to;
    }

    double fromPercent() {
      return row.maybeNumber("from_percent").orElse(0);
    }
  }

  /** The rows, each once, in the order of the file. */
  List<ReferenceRow> in(String text) {
    List<Match> all = matches(text);
    OptionalDouble percent = WholeWords.percent(text);
    return rows.stream()
        .filter(
            row -> all.stream().anyMatch(match -> match.row() == row && meant(match, all, percent)))
        .toList();
  }

  private static boolean meant(Match match, List<Match> all, OptionalDouble percent) {
    if (all.stream().anyMatch(match::isWithin)) {
      return false;
    }
    if (percent.isEmpty()) {
      return true;
    }
    double stated = percent.getAsDouble();
    return match.fromPercent() <= stated
        && all.stream()
            .filter(match::isSamePlace)
            .noneMatch(
                other ->
                    other.fromPercent() > match.fromPercent() && other.fromPercent() <= stated);
  }

  private List<Match> matches(String text) {
    List<Match> found = new ArrayList<>();
    for (ReferenceRow row : rows) {
      for (String word : row.text("words").split("\\|", -1)) {
        Matcher matcher = WholeWords.word(word).matcher(text);
        while (!word.isEmpty() && matcher.find()) {
          found.add(new Match(row, matcher.start(), matcher.end()));
        }
      }
    }
    return found;
  }
}
