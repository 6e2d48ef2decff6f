package org.wetside.store;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BathTest;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.BottleMark;
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
    Cells cells = Cells.of(line.what());
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
            Optional.ofNullable(cells.volume),
            Optional.ofNullable(cells.out),
            Optional.ofNullable(cells.day),
            Optional.ofNullable(cells.clearing).map(Clearing::time),
            Optional.ofNullable(cells.clearing).map(Clearing::film),
            Optional.ofNullable(cells.clearing).map(Clearing::dilution),
            Optional.ofNullable(cells.clearing).map(Clearing::temperature),
            Optional.ofNullable(cells.clearing).map(Clearing::baseline),
            Optional.ofNullable(cells.rolls),
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
            row.moment("happened_at"), row.text("run"), row.text("note"), what(row, film)),
        row.volume("left_volume_ml"));
  }

  private static BottleEvent what(Row row, List<FilmUse> film) {
    String kind = row.text("kind");
    return switch (kind) {
      case "filled" -> new BottleEvent.Filled(row.volume("volume_ml"));
      case "opened" -> new BottleEvent.Opened(row.day("opened_on"));
      case "used" -> new BottleEvent.Used(row.volume("volume_ml"), film);
      case "use taken back" -> new BottleEvent.UseUndone(row.volume("volume_ml"), film);
      case "taken out" -> new BottleEvent.Taken(row.volume("volume_ml"));
      case "poured back" -> new BottleEvent.PouredBack(row.volume("volume_ml"));
      case "topped up" ->
          new BottleEvent.ToppedUp(row.volume("out_volume_ml"), row.volume("volume_ml"));
      case "corrected" -> new BottleEvent.Corrected(row.volume("volume_ml"));
      case "moved down" -> new BottleEvent.MovedDown();
      case "discarded" -> new BottleEvent.Discarded();
      case "rolls fixed again" -> new BottleEvent.Refixed(List.of(row.text("rolls").split("\n")));
      default -> mark(kind).orElseGet(() -> test(kind, row));
    };
  }

  private static Optional<BottleEvent> mark(String kind) {
    for (BottleMark mark : BottleMark.values()) {
      if (mark.word().equals(kind)) {
        return Optional.of(new BottleEvent.Marked(mark));
      }
      if (mark.liftedWord().equals(kind)) {
        return Optional.of(new BottleEvent.MarkLifted(mark));
      }
    }
    return Optional.empty();
  }

  private static BottleEvent test(String kind, Row row) {
    for (BathTest test : BathTest.values()) {
      for (boolean passed : new boolean[] {true, false}) {
        BottleEvent.Tested tested = new BottleEvent.Tested(test, passed, clearing(row));
        if (tested.word().equals(kind)) {
          return tested;
        }
      }
    }
    throw new StoreException("no such line in a bottle's ledger: " + kind);
  }

  private static Optional<Clearing> clearing(Row row) {
    return row.maybeDuration("clearing_ms")
        .map(
            time ->
                new Clearing(
                    time,
                    row.text("clip_film"),
                    row.text("clip_dilution"),
                    row.temperature("clip_temperature_c"),
                    row.yes("baseline")));
  }

  /** What an event fills in of the columns that not every event has. */
  private static final class Cells {
    private @Nullable Volume volume;
    private @Nullable Volume out;
    private @Nullable LocalDate day;
    private @Nullable Clearing clearing;
    private @Nullable String rolls;

    static Cells of(BottleEvent what) {
      Cells cells = new Cells();
      if (what instanceof BottleEvent.Filled filled) {
        cells.volume = filled.volume();
      } else if (what instanceof BottleEvent.Opened opened) {
        cells.day = opened.day();
      } else if (what instanceof BottleEvent.Used used) {
        cells.volume = used.volume();
      } else if (what instanceof BottleEvent.UseUndone undone) {
        cells.volume = undone.volume();
      } else if (what instanceof BottleEvent.Taken taken) {
        cells.volume = taken.volume();
      } else if (what instanceof BottleEvent.PouredBack back) {
        cells.volume = back.volume();
      } else if (what instanceof BottleEvent.ToppedUp topped) {
        cells.volume = topped.added();
        cells.out = topped.out();
      } else if (what instanceof BottleEvent.Corrected corrected) {
        cells.volume = corrected.left();
      } else if (what instanceof BottleEvent.Tested tested) {
        cells.clearing = tested.clearing().orElse(null);
      } else if (what instanceof BottleEvent.Refixed refixed) {
        cells.rolls = String.join("\n", refixed.rolls());
      }
      return cells;
    }
  }
}
