package org.wetside.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.Clearing;
import org.wetside.core.shelf.FilmUse;
import org.wetside.core.shelf.LedgerLine;
import org.wetside.core.shelf.PostedLine;
import org.wetside.core.shelf.TestSeen;

/** A ledger as rows: how each event is written, and read back. */
final class LedgerRows {
  private final Session session;

  LedgerRows(Session session) {
    this.session = session;
  }

  /** Writes a line and the rolls it names; returns its id. */
  long write(long bottle, LedgerLine line, Volume leftAfter) {
    BottleEventColumns cells = BottleEventColumns.of(line.what());
    long id =
        session.insert(
            "INSERT INTO bottle_line (bottle_id, kind, happened_at, run, note, volume_ml,"
                + " out_volume_ml, opened_on, clearing_ms, clip_film, clip_dilution,"
                + " clip_temperature_c, baseline, rolls, left_volume_ml)"
                + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
            bottle,
            line.what().word(),
            line.at(),
            line.run(),
            line.note(),
            cells.volume(),
            cells.out(),
            cells.day(),
            cells.clearing().map(Clearing::time),
            cells.clearing().map(Clearing::film),
            cells.clearing().map(Clearing::dilution),
            cells.clearing().map(Clearing::temperature),
            cells.clearing().map(Clearing::baseline),
            cells.rolls(),
            leftAfter);
    return id;
  }

  /** A whole ledger, the oldest line first. */
  List<PostedLine> all(long bottle) {
    return read(
        "SELECT * FROM bottle_line WHERE bottle_id = ? ORDER BY id",
        "SELECT * FROM bottle_roll WHERE bottle_id = ? ORDER BY id",
        bottle);
  }

  /** Lines before one id, the newest first, at most so many. */
  List<PostedLine> page(long bottle, long before, int most) {
    List<PostedLine> lines =
        session.list(
            "SELECT * FROM bottle_line WHERE bottle_id = ? AND id < ? ORDER BY id DESC LIMIT ?",
            row -> line(row, List.of()),
            bottle,
            before,
            most);
    List<PostedLine> named = new ArrayList<>();
    for (PostedLine line : lines) {
      named.add(
          line.line().what() instanceof BottleEvent.Used
                  || line.line().what() instanceof BottleEvent.UseUndone
              ? one(line.id())
              : line);
    }
    return named;
  }

  /** A test by the id of its line. */
  TestSeen test(long id) {
    LedgerLine line = one(id).line();
    return new TestSeen(line.at(), (BottleEvent.Tested) line.what());
  }

  private PostedLine one(long id) {
    return read(
            "SELECT * FROM bottle_line WHERE id = ?",
            "SELECT * FROM bottle_roll WHERE line_id = ? ORDER BY id",
            id)
        .get(0);
  }

  private List<PostedLine> read(String lines, String rolls, long key) {
    Map<Long, List<FilmUse>> film =
        session.list(rolls, row -> Map.entry(row.whole("line_id"), use(row)), key).stream()
            .collect(
                Collectors.groupingBy(
                    Map.Entry::getKey,
                    Collectors.mapping(Map.Entry::getValue, Collectors.toList())));
    return session.list(
        lines, row -> line(row, film.getOrDefault(row.whole("id"), List.of())), key);
  }

  static FilmUse use(Row row) {
    return new FilmUse(
        row.text("roll"),
        row.text("film"),
        UnitOfUse.ofRolls(row.number("film_rolls")),
        row.yes("tabular"));
  }

  static PostedLine line(Row row, List<FilmUse> film) {
    return new PostedLine(
        row.whole("id"),
        new LedgerLine(
            row.moment("happened_at"),
            row.text("run"),
            row.text("note"),
            BottleEventColumns.read(row, film)),
        row.volume("left_volume_ml"));
  }
}
