package org.wetside.app.times;

import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.wetside.store.Database;

/** Keeps a printed table: temperatures across, dilutions or exposure indexes down. */
public final class TypeLeaflet {
  /** What the rows of the table differ in. */
  public enum Down {
    /** Dilutions, at one index. */
    DILUTIONS,
    /** Exposure indexes, at one dilution. */
    INDEXES
  }

  /**
   * A row of the table.
   *
   * @param head dilution or exposure index
   * @param minutes one cell for each temperature; empty where the leaflet is empty
   */
  public record Row(String head, List<String> minutes) {
    public Row {
      minutes = List.copyOf(minutes);
    }
  }

  /**
   * A table as typed.
   *
   * @param common what holds for all cells; its dilution or index is not looked at where rows give
   *     it, nor its temperature and minutes
   * @param down what the rows differ in
   * @param temperatures across, each with its unit
   * @param rows down
   */
  public record Leaflet(OwnLine common, Down down, List<String> temperatures, List<Row> rows) {
    public Leaflet {
      temperatures = List.copyOf(temperatures);
      rows = List.copyOf(rows);
    }
  }

  private final OwnBook book;

  /** Into this home. */
  public TypeLeaflet(Supplier<Database> database, Clock clock) {
    book = new OwnBook(new TimeShelf(database), clock);
  }

  /**
   * Keeps every filled cell, or none. Problems name the row of the table, from 1, and the column as
   * {@code minutes-2}, {@code temp-2} or the field of what is common.
   */
  public KeepOutcome keep(Leaflet leaflet) {
    Map<Integer, OwnLine> lines = new LinkedHashMap<>();
    Map<Integer, int[]> cells = new LinkedHashMap<>();
    for (int row = 0; row < leaflet.rows().size(); row++) {
      List<String> minutes = leaflet.rows().get(row).minutes();
      for (int column = 0; column < minutes.size(); column++) {
        if (!minutes.get(column).isBlank()) {
          int number = lines.size() + 1;
          lines.put(number, line(leaflet, row, column));
          cells.put(number, new int[] {row, column});
        }
      }
    }
    if (lines.isEmpty()) {
      return new KeepOutcome.Refused(
          List.of(new RowProblem(0, "", "no time stands in the table yet: fill in at least one")));
    }
    KeepOutcome outcome = book.keep(lines, List.of());
    return outcome instanceof KeepOutcome.Refused refused
        ? new KeepOutcome.Refused(placed(refused, cells, leaflet.down()))
        : outcome;
  }

  private static OwnLine line(Leaflet leaflet, int row, int column) {
    OwnLine common = leaflet.common();
    String head = leaflet.rows().get(row).head();
    boolean dilutions = leaflet.down() == Down.DILUTIONS;
    String temperature =
        column < leaflet.temperatures().size() ? leaflet.temperatures().get(column) : "";
    return new OwnLine(
        common.film(),
        common.developer(),
        dilutions ? head : common.dilution(),
        dilutions ? common.ei() : head,
        temperature,
        leaflet.rows().get(row).minutes().get(column),
        common.vessel(),
        common.agitation(),
        common.contrast(),
        common.source());
  }

  private static List<RowProblem> placed(
      KeepOutcome.Refused refused, Map<Integer, int[]> cells, Down down) {
    List<RowProblem> placed = new ArrayList<>();
    for (RowProblem problem : refused.problems()) {
      int[] cell = cells.getOrDefault(problem.row(), new int[] {0, 0});
      String head = down == Down.DILUTIONS ? "dilution" : "ei";
      String column =
          switch (problem.column()) {
            case "temp" -> "temp-" + cell[1];
            case "minutes", "" -> "minutes-" + cell[0] + "-" + cell[1];
            default -> problem.column().equals(head) ? "head-" + cell[0] : problem.column();
          };
      RowProblem at = new RowProblem(cell[0] + 1, column, problem.message());
      if (placed.stream()
          .noneMatch(
              one -> one.column().equals(column) && one.message().equals(problem.message()))) {
        placed.add(at);
      }
    }
    return placed;
  }
}
