package org.wetside.store;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.BathTest;
import org.wetside.core.shelf.BottleEvent;
import org.wetside.core.shelf.BottleMark;
import org.wetside.core.shelf.Clearing;
import org.wetside.core.shelf.FilmUse;

/** How an event of a bottle fills the columns that not every event has, and is read back. */
final class BottleEventColumns {
  private @Nullable Volume volume;
  private @Nullable Volume out;
  private @Nullable LocalDate day;
  private @Nullable Clearing clearing;
  private @Nullable String rolls;

  /** The columns of an event. */
  static BottleEventColumns of(BottleEvent what) {
    BottleEventColumns cells = new BottleEventColumns();
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

  Optional<Volume> volume() {
    return Optional.ofNullable(volume);
  }

  Optional<Volume> out() {
    return Optional.ofNullable(out);
  }

  Optional<LocalDate> day() {
    return Optional.ofNullable(day);
  }

  Optional<Clearing> clearing() {
    return Optional.ofNullable(clearing);
  }

  Optional<String> rolls() {
    return Optional.ofNullable(rolls);
  }

  /**
   * The event of a row.
   *
   * @param film the rolls that the line names
   */
  static BottleEvent read(Row row, List<FilmUse> film) {
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
}
