package org.wetside.reference;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.wetside.core.development.Agitation;
import org.wetside.core.development.ContrastSeries;
import org.wetside.core.development.Developer;
import org.wetside.core.development.DeveloperCatalogue;
import org.wetside.core.development.EntryIndex;
import org.wetside.core.development.Film;
import org.wetside.core.development.FilmCatalogue;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.IndexRule;
import org.wetside.core.development.StepRule;
import org.wetside.core.development.StepRules;
import org.wetside.core.development.TimeLibrary;
import org.wetside.core.quantity.DilutionRatio;
import org.wetside.core.quantity.ExposureIndex;

/**
 * The files of {@code development} as films, developers and a library of times. Each file is read
 * when first asked for: a short command that finds its answer printed reads three of them.
 */
public final class DevelopmentTimes {
  private DevelopmentTimes() {}

  /** Films by name and alias. */
  public static FilmCatalogue films() {
    return FilmCatalogue.of(
        CsvText.read("development/films").lines().stream().map(DevelopmentTimes::film).toList());
  }

  private static Film film(CsvText.Line row) {
    Set<FilmFormat> formats = new HashSet<>();
    for (String format : list(row.cell("formats"))) {
      formats.add(FilmFormat.parse(format));
    }
    String successor = row.cell("succeeded_by");
    return new Film(
        row.cell("code"),
        row.cell("maker"),
        row.cell("name"),
        list(row.cell("aliases")),
        row.cell("grain").equals("tabular"),
        formats,
        row.cell("coating").equals("former") ? Film.Coating.FORMER : Film.Coating.NEWEST,
        successor.isEmpty() ? Optional.empty() : Optional.of(successor));
  }

  /** Developers by name and alias. */
  public static DeveloperCatalogue developers() {
    return DeveloperCatalogue.of(
        CsvText.read("development/developers").lines().stream()
            .map(DevelopmentTimes::developer)
            .toList());
  }

  private static Developer developer(CsvText.Line row) {
    Map<String, DilutionRatio> letters = new HashMap<>();
    for (String letter : list(row.cell("letters"))) {
      String[] parts = letter.split("=", -1);
      letters.put(parts[0], DilutionRatio.parse(parts[1]));
    }
    return new Developer(
        row.cell("name"),
        list(row.cell("aliases")),
        letters,
        Agitation.parse(row.cell("agitation")));
  }

  private static List<String> list(String cell) {
    return cell.isEmpty() ? List.of() : Arrays.asList(cell.split("\\|", -1));
  }

  /** Published times, the rules that lead from them to others, and the evidence for both. */
  public static TimeLibrary library() {
    return new TimeLibrary(
        EntryIndex.of(PrintedTimes.read("development/times")),
        EntryIndex.empty(),
        once(() -> EntryIndex.of(PrintedTimes.read("development/series"))),
        once(DevelopmentTimes::contrast),
        once(DevelopmentTimes::indexRules),
        StepRules.of(
            CsvText.read("development/steps").lines().stream()
                .map(DevelopmentTimes::stepRule)
                .toList()));
  }

  private static StepRule stepRule(CsvText.Line row) {
    ReferenceRow cited = new ReferenceRow(row);
    return new StepRule(
        StepRule.Name.fromId(row.cell("id")),
        cited.number("value"),
        cited.maybeNumber("ln_sd").orElse(0),
        cited.maybeNumber("ln_sd_per").orElse(0),
        cited.standing(),
        cited.citation());
  }

  private static List<IndexRule> indexRules() {
    return CsvText.read("development/index_rules").lines().stream()
        .filter(row -> row.cell("kind").equals("normal"))
        .map(
            row ->
                new IndexRule(
                    row.cell("film"),
                    row.cell("developer"),
                    ExposureIndex.parse(row.cell("ei_from")),
                    ExposureIndex.parse(row.cell("ei_to")),
                    new ReferenceRow(row).citation(),
                    new ReferenceRow(row).standing()))
        .toList();
  }

  /** Contrast against time, as printed or digitised. */
  public static List<ContrastSeries> contrast() {
    return CsvText.read("development/contrast").lines().stream().map(ContrastRows::series).toList();
  }

  /** Read at the first call, kept for the next. */
  private static <T> Supplier<T> once(Supplier<T> reader) {
    return new Supplier<>() {
      private Optional<T> kept = Optional.empty();

      @Override
      public synchronized T get() {
        if (kept.isEmpty()) {
          kept = Optional.of(reader.get());
        }
        return kept.get();
      }
    };
  }
}
