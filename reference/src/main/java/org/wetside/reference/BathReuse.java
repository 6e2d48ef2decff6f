package org.wetside.reference;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.shelf.ReuseStep;
import org.wetside.core.shelf.ReuseTable;

/** Makers' tables of times by roll number in one bath. */
public final class BathReuse {
  private BathReuse() {}

  /** All tables of a developer of that name, in the order of the file. */
  public static List<ReuseTable> of(String developer) {
    String name = developer.toLowerCase(Locale.ROOT);
    Map<String, List<ReuseStep>> tables = new LinkedHashMap<>();
    for (ReferenceRow row : ReferenceTable.open("development/bath_reuse").rows()) {
      boolean step = !row.text("roll_from").isEmpty();
      if (step && row.text("developer").toLowerCase(Locale.ROOT).equals(name)) {
        tables
            .computeIfAbsent(row.text("film") + row.text("format"), key -> new ArrayList<>())
            .add(read(row));
      }
    }
    return tables.values().stream().map(ReuseTable::new).toList();
  }

  private static ReuseStep read(ReferenceRow row) {
    Optional<Duration> time =
        row.text("minutes").isEmpty()
            ? Optional.empty()
            : Optional.of(Duration.ofMillis(Math.round(row.number("minutes") * 60_000)));
    return new ReuseStep(
        row.text("developer"),
        row.text("dilution"),
        row.text("film"),
        row.text("format"),
        ExposureIndex.of(row.number("ei")),
        Volume.ofMillilitres(row.number("volume_ml")),
        (int) row.number("roll_from"),
        (int) row.number("roll_to"),
        time,
        Temperature.ofCelsius(row.number("temperature_c")),
        row.standing(),
        row.citation());
  }
}
