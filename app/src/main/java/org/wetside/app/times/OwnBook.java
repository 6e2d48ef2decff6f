package org.wetside.app.times;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wetside.core.development.TimeEntry;
import org.wetside.store.OwnTimes;

/** Keeps lines: all of them or none, and none twice. */
final class OwnBook {
  private final TimeShelf shelf;
  private final Clock clock;

  OwnBook(TimeShelf shelf, Clock clock) {
    this.shelf = shelf;
    this.clock = clock;
  }

  /** What makes two entries answers to one question. */
  private record Conditions(
      String film,
      String developer,
      String dilution,
      String index,
      String temperature,
      String vessel,
      String agitation,
      String contrast,
      String source) {
    static Conditions of(TimeEntry entry) {
      return new Conditions(
          entry.filmCode(),
          entry.developer(),
          entry.dilution().label(),
          entry.exposureIndex().map(Object::toString).orElse(""),
          entry.temperature().map(Object::toString).orElse(""),
          entry.vessel().word(),
          entry.agitation().word(),
          entry.contrast(),
          entry.citation().sourceId());
    }
  }

  /**
   * Keeps them, unless anything stands in the way.
   *
   * @param lines the rows by their number
   * @param found problems found already; with any of them nothing is kept
   */
  KeepOutcome keep(Map<Integer, OwnLine> lines, List<RowProblem> found) {
    return shelf
        .database()
        .get()
        .inTransaction(
            session -> {
              OwnTimes times = new OwnTimes(session);
              return keep(lines, found, times, times.inUse());
            });
  }

  private KeepOutcome keep(
      Map<Integer, OwnLine> lines, List<RowProblem> found, OwnTimes times, List<TimeEntry> onFile) {
    OwnLineReader reader = new OwnLineReader(TimeShelf.with(onFile));
    Map<Conditions, TimeEntry> known = new HashMap<>();
    onFile.forEach(entry -> known.put(Conditions.of(entry), entry));
    Map<Conditions, Integer> rowOf = new HashMap<>();
    List<RowProblem> problems = new ArrayList<>(found);
    Map<Integer, TimeEntry> fresh = new LinkedHashMap<>();
    int alreadyThere = 0;
    for (Map.Entry<Integer, OwnLine> line : lines.entrySet()) {
      int row = line.getKey();
      OwnLineReader.Reading reading = reader.read(row, line.getValue());
      problems.addAll(reading.problems());
      if (reading.entry().isEmpty()) {
        continue;
      }
      TimeEntry entry = reading.entry().get();
      Conditions conditions = Conditions.of(entry);
      Integer earlier = rowOf.putIfAbsent(conditions, row);
      TimeEntry same = known.get(conditions);
      if (earlier != null) {
        problems.add(
            new RowProblem(
                row, "", "the same conditions and source stand in row " + earlier + " already"));
      } else if (same == null) {
        fresh.put(row, entry);
      } else if (same.time().equals(entry.time()) && same.longest().equals(entry.longest())) {
        alreadyThere++;
      } else {
        problems.add(new RowProblem(row, "minutes", contradiction(same)));
      }
    }
    if (!problems.isEmpty()) {
      problems.sort(Comparator.comparingInt(RowProblem::row));
      return new KeepOutcome.Refused(problems);
    }
    return store(lines, fresh, alreadyThere, times);
  }

  private static String contradiction(TimeEntry same) {
    return "for the same conditions and source "
        + OwnText.minutes(same)
        + " min is on file as "
        + same.id()
        + "; withdraw that first";
  }

  private KeepOutcome store(
      Map<Integer, OwnLine> lines,
      Map<Integer, TimeEntry> fresh,
      int alreadyThere,
      OwnTimes times) {
    List<TimeEntry> kept = new ArrayList<>();
    fresh.forEach(
        (row, entry) -> {
          OwnLine line = lines.get(row);
          String typed = line == null ? entry.filmCode() : line.film().strip();
          kept.add(OwnText.withId(entry, times.add(typed, entry, clock.instant())));
        });
    return new KeepOutcome.Kept(kept, alreadyThere);
  }
}
