package org.wetside.reference;

import java.time.Period;
import java.util.List;
import java.util.Optional;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.KeepingTime;
import org.wetside.core.shelf.Storage;

/** How long solutions keep, by how they are kept. */
public final class KeepingTimes {
  private static final class Lazy {
    private static final List<ReferenceRow> ROWS = ReferenceTable.open("baths/storage").rows();
  }

  private KeepingTimes() {}

  /**
   * What is on file for a bottle as full as it is. Where only a full bottle is on file its time
   * stands for a less full one too, as the most it can be.
   */
  public static Optional<KeepingTime> of(Bottle bottle) {
    List<ReferenceRow> rows = BottleRows.of(Lazy.ROWS, bottle.label());
    return inStorage(rows, bottle.storage()).or(() -> inStorage(rows, Storage.FULL));
  }

  private static Optional<KeepingTime> inStorage(List<ReferenceRow> rows, Storage storage) {
    return rows.stream()
        .filter(row -> row.text("fill").equals(storage.word()))
        .findFirst()
        .map(KeepingTimes::read);
  }

  private static KeepingTime read(ReferenceRow row) {
    return new KeepingTime(
        row.text("solution"),
        row.text("words"),
        keeps(row),
        Storage.fromWord(row.text("fill")),
        row.text("words").startsWith("single"),
        row.standing(),
        row.citation());
  }

  private static Optional<Period> keeps(ReferenceRow row) {
    if (row.text("keeps").isEmpty()) {
      return Optional.empty();
    }
    int count = (int) row.number("keeps");
    return Optional.of(
        switch (row.text("unit")) {
          case "years" -> Period.ofYears(count);
          case "months" -> Period.ofMonths(count);
          case "weeks" -> Period.ofWeeks(count);
          case "days" -> Period.ofDays(count);
          default -> Period.ofDays(1);
        });
  }
}
