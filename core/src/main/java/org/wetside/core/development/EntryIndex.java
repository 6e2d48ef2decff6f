package org.wetside.core.development;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Entries found by film and developer, grouped into series when a film is first asked for: a short
 * command groups one film, not all.
 */
public final class EntryIndex {
  private static final EntryIndex EMPTY = new EntryIndex(List.of());

  private final List<TimeEntry> entries;
  private final Map<String, List<TimeEntry>> entriesOfFilm = new LinkedHashMap<>();
  private final Map<String, List<TimeSeries>> seriesOfFilm = new ConcurrentHashMap<>();

  private EntryIndex(List<TimeEntry> entries) {
    this.entries = List.copyOf(entries);
    for (TimeEntry entry : this.entries) {
      entriesOfFilm.computeIfAbsent(entry.filmCode(), film -> new ArrayList<>()).add(entry);
    }
  }

  /** Of these entries. */
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

  /** The entries of this film, in the order given. */
  List<TimeEntry> entriesOf(String filmCode) {
    return entriesOfFilm.getOrDefault(filmCode, List.of());
  }

  /** Whether any entry is of this film. */
  public boolean hasFilm(String filmCode) {
    return entriesOfFilm.containsKey(filmCode);
  }

  /** Whether any entry is of this film in this developer. */
  public boolean has(String filmCode, String developer) {
    for (TimeEntry entry : entriesOfFilm.getOrDefault(filmCode, List.of())) {
      if (entry.developer().equals(developer)) {
        return true;
      }
    }
    return false;
  }

  List<TimeSeries> series() {
    List<TimeSeries> all = new ArrayList<>();
    for (String film : entriesOfFilm.keySet()) {
      all.addAll(ofFilm(film));
    }
    return all;
  }

  List<TimeSeries> ofFilm(String filmCode) {
    return seriesOfFilm.computeIfAbsent(
        filmCode, film -> grouped(entriesOfFilm.getOrDefault(film, List.of())));
  }

  List<TimeSeries> ofDeveloper(String developer) {
    List<TimeSeries> its = new ArrayList<>();
    for (TimeSeries one : series()) {
      if (one.first().developer().equals(developer)) {
        its.add(one);
      }
    }
    return its;
  }

  private static List<TimeSeries> grouped(List<TimeEntry> ofOneFilm) {
    Map<String, List<List<TimeEntry>>> groups = new LinkedHashMap<>();
    for (TimeEntry entry : ofOneFilm) {
      if (entry.temperature().isPresent()) {
        place(entry, groups.computeIfAbsent(conditions(entry), key -> new ArrayList<>()));
      }
    }
    List<TimeSeries> series = new ArrayList<>();
    for (List<List<TimeEntry>> sameConditions : groups.values()) {
      for (List<TimeEntry> group : sameConditions) {
        series.add(new TimeSeries(group));
      }
    }
    return List.copyOf(series);
  }

  /** What the entries of one series of a film have in common, written together. */
  private static String conditions(TimeEntry entry) {
    StringBuilder key = new StringBuilder(entry.developer());
    key.append('|').append(entry.dilution().label());
    if (entry.exposureIndex().isPresent()) {
      key.append('|').append(entry.exposureIndex().get().isoArithmetic());
    }
    key.append('|').append(entry.vessel());
    key.append('|').append(entry.agitation());
    key.append('|').append(entry.format());
    key.append('|').append(entry.citation().sourceId());
    return key.append('|').append(entry.contrast()).toString();
  }

  /** A second time at one temperature begins a series of its own: it is not averaged. */
  private static void place(TimeEntry entry, List<List<TimeEntry>> groups) {
    for (List<TimeEntry> group : groups) {
      if (!holdsTemperatureOf(entry, group)) {
        group.add(entry);
        return;
      }
    }
    groups.add(new ArrayList<>(List.of(entry)));
  }

  private static boolean holdsTemperatureOf(TimeEntry entry, List<TimeEntry> group) {
    double celsius = entry.temperature().orElseThrow().celsius();
    for (TimeEntry other : group) {
      double away = other.temperature().orElseThrow().celsius() - celsius;
      if (Math.abs(away) < TimeSeries.SAME_TEMPERATURE_K) {
        return true;
      }
    }
    return false;
  }
}
