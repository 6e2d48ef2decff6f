package org.wetside.web.wash;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wetside.core.wash.WashMethod;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the page about washing and drying.
 *
 * @param sheet the sheet
 * @param form what was asked
 * @param wash the wash foreseen; null when what was asked is refused
 * @param wide its course for a wide sheet; null without one
 * @param narrow the same for a narrow sheet
 * @param ways every way on file for the same tank; empty when what was asked is refused
 * @param drying from the last water to dry film; null likewise
 * @param choices the ways to choose from
 */
public record WashPage(
    Sheet sheet,
    FilledForm form,
    @Nullable WashView wash,
    @Nullable CourseDrawing wide,
    @Nullable CourseDrawing narrow,
    List<WashView> ways,
    @Nullable DryingView drying,
    Map<String, String> choices) {

  /** One line of the table of fills. */
  public record FillLine(int number, String rule, String first, String second) {}

  /** What each fill leaves. */
  public List<FillLine> lines() {
    if (wash == null) {
      return List.of();
    }
    List<List<Double>> residues =
        wash.residueGramsPerSquareMetre() == null
            ? List.of()
            : List.copyOf(wash.residueGramsPerSquareMetre().values());
    return java.util.stream.IntStream.range(0, wash.fills())
        .mapToObj(
            fill ->
                new FillLine(
                    fill + 1,
                    wash.standing()
                        ? Figure.of(wash.equilibriumResidueGramsPerSquareMetre().get(fill))
                        : "",
                    residues.isEmpty() ? "" : Figure.of(residues.get(0).get(fill)),
                    residues.isEmpty() ? "" : Figure.of(residues.get(1).get(fill))))
        .toList();
  }

  /** Minutes as they are read off. */
  public static String minutes(double seconds) {
    return Math.round(seconds / 60) + " min";
  }

  /** The ways to choose from, by short name. */
  static Map<String, String> choices(List<WashMethod> methods) {
    Map<String, String> words = new LinkedHashMap<>();
    methods.forEach(method -> words.put(method.slug(), method.name()));
    words.put(WashQuery.FILLS, "Fills of my own");
    words.put(WashQuery.RUNNING, "Running water of my own");
    return words;
  }
}
