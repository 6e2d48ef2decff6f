package org.wetside.reference;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.wetside.core.learning.ContrastWord;
import org.wetside.core.learning.LearningRules;
import org.wetside.core.learning.LearningRules.Worth;
import org.wetside.core.learning.Scatter;
import org.wetside.core.learning.ShadowWord;
import org.wetside.core.learning.ToeShape;

/** What words and densities are worth: the file of learning, and the toe of published curves. */
public final class LearningFigures {
  private LearningFigures() {}

  /** Read anew at each call. */
  public static LearningRules read() {
    Map<String, ReferenceRow> rows =
        ReferenceTable.open("development/learning").rows().stream()
            .collect(Collectors.toMap(row -> row.text("id"), row -> row));
    return new LearningRules(
        scatter(rows, "time"),
        scatter(rows, "index"),
        worths(rows, "contrast-", ContrastWord.class),
        worths(rows, "shadows-", ShadowWord.class),
        row(rows, "density").number("sd"),
        toe());
  }

  private static Scatter scatter(Map<String, ReferenceRow> rows, String of) {
    return new Scatter(
        row(rows, of + "-common").number("sd"),
        row(rows, of + "-pair").number("sd"),
        row(rows, of + "-roll").number("sd"));
  }

  private static <W extends Enum<W>> Map<W, Worth> worths(
      Map<String, ReferenceRow> rows, String prefix, Class<W> words) {
    Map<W, Worth> worths = new EnumMap<>(words);
    for (W word : words.getEnumConstants()) {
      ReferenceRow row = row(rows, prefix + word.name().toLowerCase(Locale.ROOT).replace('_', '-'));
      worths.put(word, new Worth(row.number("value"), row.number("sd")));
    }
    return worths;
  }

  private static ReferenceRow row(Map<String, ReferenceRow> rows, String id) {
    ReferenceRow row = rows.get(id);
    if (row == null) {
      throw new IllegalStateException("the file of learning has no row " + id);
    }
    return row;
  }

  /** The mean toe of the published curves of one film at several times. */
  private static ToeShape toe() {
    Map<String, List<ReferenceRow>> curves = new LinkedHashMap<>();
    for (ReferenceRow row : ReferenceTable.open("curves/tri_x_400").rows()) {
      curves.computeIfAbsent(row.text("minutes"), unused -> new ArrayList<>()).add(row);
    }
    return ToeShape.mean(curves.values().stream().map(LearningFigures::curve).toList());
  }

  private static List<ToeShape.Point> curve(List<ReferenceRow> rows) {
    double clear = rows.stream().mapToDouble(row -> row.number("density")).min().orElseThrow();
    return rows.stream()
        .map(row -> new ToeShape.Point(row.number("log10_h"), row.number("density") - clear))
        .toList();
  }
}
