package org.wetside.core.development;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.wetside.core.quantity.TimeSpan;

/** What an estimate may draw on; what is joined from several parts is joined once. */
public final class TimeLibrary {
  private final EntryIndex published;
  private final EntryIndex own;
  private final Supplier<EntryIndex> evidence;
  private final Supplier<List<ContrastSeries>> contrast;
  private final Supplier<List<IndexRule>> indexRules;
  private final StepRules rules;
  private final List<OwnFactor> factors;
  private final Map<String, List<TimeSeries>> answerable = new ConcurrentHashMap<>();
  private final Map<String, List<TimeSeries>> allOfFilm = new ConcurrentHashMap<>();
  private final Map<String, List<TimeSeries>> allOfDeveloper = new ConcurrentHashMap<>();
  private final Map<FilmInDeveloper, List<TimeSeries>> allOfBoth = new ConcurrentHashMap<>();

  private record FilmInDeveloper(String film, String developer) {}

  /**
   * Of its parts; those behind a supplier are asked for only when a step needs them.
   *
   * @param published published entries that may be the start of an answer
   * @param own the user's own entries
   * @param evidence further published entries, for slopes and ratios only
   * @param contrast contrast against time
   * @param indexRules indexes the makers call normal processing
   * @param rules the step rules
   */
  public TimeLibrary(
      EntryIndex published,
      EntryIndex own,
      Supplier<EntryIndex> evidence,
      Supplier<List<ContrastSeries>> contrast,
      Supplier<List<IndexRule>> indexRules,
      StepRules rules) {
    this(published, own, evidence, contrast, indexRules, rules, List.of());
  }

  private TimeLibrary(
      EntryIndex published,
      EntryIndex own,
      Supplier<EntryIndex> evidence,
      Supplier<List<ContrastSeries>> contrast,
      Supplier<List<IndexRule>> indexRules,
      StepRules rules,
      List<OwnFactor> factors) {
    this.published = published;
    this.own = own;
    this.evidence = evidence;
    this.contrast = contrast;
    this.indexRules = indexRules;
    this.rules = rules;
    this.factors = List.copyOf(factors);
  }

  /** The same library with these entries of the user's. */
  public TimeLibrary withOwn(EntryIndex entries) {
    return new TimeLibrary(published, entries, evidence, contrast, indexRules, rules, factors);
  }

  /** The same library with these factors, which the user has accepted. */
  public TimeLibrary withFactors(List<OwnFactor> accepted) {
    return new TimeLibrary(published, own, evidence, contrast, indexRules, rules, accepted);
  }

  /** The series of contrast against time of one film in one developer. */
  public List<ContrastSeries> contrastOf(String filmCode, String developer) {
    return contrast.get().stream()
        .filter(series -> series.filmCode().equals(filmCode))
        .filter(series -> series.developer().equals(developer))
        .toList();
  }

  /** The factor the user has accepted for one film in one developer. */
  Optional<OwnFactor> factorOf(String filmCode, String developer) {
    return factors.stream()
        .filter(factor -> factor.filmCode().equals(filmCode))
        .filter(factor -> factor.developer().equals(developer))
        .findFirst();
  }

  /** Published entries that may be the start of an answer. */
  public EntryIndex published() {
    return published;
  }

  /** The user's own entries. */
  public EntryIndex own() {
    return own;
  }

  /** Further published entries, for slopes and ratios only. */
  public EntryIndex evidence() {
    return evidence.get();
  }

  /** Whether an answer could start from this film in this developer. */
  public boolean has(String filmCode, String developer) {
    return own.has(filmCode, developer) || published.has(filmCode, developer);
  }

  /** Whether an answer could start from this film. */
  public boolean hasFilm(String filmCode) {
    return own.hasFilm(filmCode) || published.hasFilm(filmCode);
  }

  /** Under this a tank turned by hand may develop unevenly. */
  public Duration shortestInHandTank() {
    return TimeSpan.ofSeconds(rules.value(StepRule.Name.HAND_TANK_SHORTEST));
  }

  /** Labels of the dilutions an answer could start from. */
  public List<String> dilutionsOf(String filmCode, String developer) {
    return answerable(filmCode).stream()
        .filter(series -> series.first().developer().equals(developer))
        .map(TimeSeries::dilutionLabel)
        .distinct()
        .toList();
  }

  /** Contrast against time, every series on file. */
  public List<ContrastSeries> contrast() {
    return contrast.get();
  }

  List<IndexRule> indexRules() {
    return indexRules.get();
  }

  StepRules rules() {
    return rules;
  }

  /** Series an answer may start from, the user's first. */
  List<TimeSeries> answerable(String filmCode) {
    return answerable.computeIfAbsent(
        filmCode, code -> joined(own.ofFilm(code), published.ofFilm(code)));
  }

  /** Every series of one film, evidence included. */
  List<TimeSeries> allOfFilm(String filmCode) {
    return allOfFilm.computeIfAbsent(
        filmCode, code -> joined(answerable(code), evidence.get().ofFilm(code)));
  }

  /** Every series of one film in one developer, evidence included. */
  List<TimeSeries> allOf(String filmCode, String developer) {
    return allOfBoth.computeIfAbsent(
        new FilmInDeveloper(filmCode, developer),
        both ->
            allOfFilm(both.film()).stream()
                .filter(series -> series.first().developer().equals(both.developer()))
                .toList());
  }

  /** Every series of one developer, evidence included. */
  List<TimeSeries> allOfDeveloper(String developer) {
    return allOfDeveloper.computeIfAbsent(
        developer,
        name ->
            joined(
                joined(own.ofDeveloper(name), published.ofDeveloper(name)),
                evidence.get().ofDeveloper(name)));
  }

  private static List<TimeSeries> joined(List<TimeSeries> first, List<TimeSeries> second) {
    List<TimeSeries> both = new ArrayList<>(first);
    both.addAll(second);
    return List.copyOf(both);
  }
}
