package org.wetside.web.bench;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.bath.BathKind;
import org.wetside.core.plan.ChosenTime;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.LoadState;
import org.wetside.core.plan.Recipe;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollLine;
import org.wetside.core.plan.RollState;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;
import org.wetside.core.source.Standing;
import org.wetside.store.Database;
import org.wetside.store.Loads;
import org.wetside.store.RollSearch;
import org.wetside.store.Rolls;

/** A home that already holds one planned load of two rolls. */
public final class StoredLoad {
  private static final Instant MADE = Instant.parse("2026-01-14T18:00:00Z");

  private StoredLoad() {}

  /** Puts it there and gives its number. */
  public static long in(Path home) {
    return in(home, List.of("A-1", "A-2"));
  }

  /** A second load of two more rolls in the same home. */
  public static long another(Path home) {
    return in(home, List.of("B-1", "B-2"));
  }

  private static long in(Path home, List<String> numbers) {
    try (Database database = Database.open(home.resolve("wetside.db"))) {
      return database.inTransaction(
          session -> {
            for (String number : numbers) {
              Roll roll =
                  new Roll(
                      number,
                      RollLine.parse("135 36 some film @400 \"a gate\"").withNumber(number),
                      Optional.empty(),
                      MADE,
                      RollState.LOADED,
                      Optional.empty());
              new Rolls(session).add(roll);
              new RollSearch(session).describe(roll);
            }
            return new Loads(session)
                .add(
                    new Load(
                        0,
                        LoadState.PLANNED,
                        MADE,
                        numbers.stream().map(StoredLoad::place).toList(),
                        "Double",
                        "small-tank",
                        new Recipe("soup", Dilution.parse("1+1"), Temperature.ofCelsius(20)),
                        new ChosenTime(
                            Duration.ofMinutes(9), Standing.PUBLISHED, "leaflet", Optional.empty()),
                        Volume.ofMillilitres(600),
                        Map.of(BathKind.DEVELOPER, "D"),
                        Optional.empty(),
                        ""))
                .id();
          });
    }
  }

  private static Load.Place place(String number) {
    return new Load.Place(number, Optional.empty(), Optional.empty());
  }
}
