package org.wetside.core.development;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Entries grouped once into series and found by film and developer. */
public final class EntryIndex {
  /** What the entries of one series have in common. */
  private record Conditions(
      String film,
      String developer,
      String dilution,
      double index,
      Vessel vessel,
      Agitation agitation,
      FilmFormat format,
      String source,
      String contrast) {
    static Conditions of(TimeEntry entry) {
      return new Conditions(
          entry.filmCode(),
          entry.developer(),
          entry.dilution().label(),
          entry.exposureIndex().map(index -> index.isoArithmetic()).orElse(0.0),
          entry.vessel(),
          entry.agitation(),
          entry.format(),
          entry.citation().sourceId(),
          entry.contrast());
    }
  }

  private static final EntryIndex EMPTY = new EntryIndex(List.of());

  private final List<TimeEntry> entries;
  private final Map<String, List<TimeSeries>> byFilm = new HashMap<>();
  private final Map<String, List<TimeSeries>> byDeveloper = new HashMap<>();
  private final List<TimeSeries> series = new ArrayList<>();

  private EntryIndex(List<TimeEntry> entries) {
    this.entries = List.copyOf(entries);
    Map<Conditions, List<List<TimeEntry>>> groups = new LinkedHashMap<>();
    for (TimeEntry entry : this.entries) {
      if (entry.temperature().isPresent()) {
        place(entry, groups.computeIfAbsent(Conditions.of(entry), key -> new ArrayList<>()));
      }
    }
    for (List<List<TimeEntry>> sameConditions : groups.values()) {
      for (List<TimeEntry> group : sameConditions) {
        add(new TimeSeries(group));
      }
    }
  }

  /** A second time at one temperature begins a series of its own: it is not averaged. */
  private static void place(TimeEntry entry, List<List<TimeEntry>> groups) {
    double celsius = entry.temperature().orElseThrow().celsius();
    for (List<TimeEntry> group : groups) {
      if (group.stream()
          .noneMatch(
              other ->
                  Math.abs(other.temperature().orElseThrow().celsius() - celsius)
                      < TimeSeries.SAME_TEMPERATURE_K)) {
        group.add(entry);
        return;
      }
    }
    groups.add(new ArrayList<>(List.of(entry)));
  }

  private void add(TimeSeries one) {
    series.add(one);
    byFilm.computeIfAbsent(one.first().filmCode(), key -> new ArrayList<>()).add(one);
    byDeveloper.computeIfAbsent(one.first().developer(), key -> new ArrayList<>()).add(one);
  }

  /** Groups the entries. */
  public static EntryIndex of(List<TimeEntry> entries) {
    return new EntryIndex(entries);
  }

  /** Nothing. */
  public static EntryIndex empty() {
    return EMPTY;
  }

  /** All entries, in the order given. */
  public List<TimeEntry> entries() {
    return entries;
  }

  /** Whether any entry is of this film. */
  public boolean hasFilm(String filmCode) {
    return entries.stream().anyMatch(entry -> entry.filmCode().equals(filmCode));
  }

  /** Whether any entry is of this film in this developer. */
  public boolean has(String filmCode, String developer) {
    return entries.stream()
        .anyMatch(
            entry -> entry.filmCode().equals(filmCode) && entry.developer().equals(developer));
  }

  List<TimeSeries> series() {
    return series;
  }

  List<TimeSeries> ofFilm(String filmCode) {
    return byFilm.getOrDefault(filmCode, List.of());
  }

  List<TimeSeries> ofDeveloper(String developer) {
    return byDeveloper.getOrDefault(developer, List.of());
  }
}
