package org.wetside.app.mixing;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.app.bench.ForeseeRun;
import org.wetside.app.equipment.KeepWaters;
import org.wetside.app.plan.KeepTonight;
import org.wetside.app.plan.LoadWish;
import org.wetside.app.plan.PrepareLoad;
import org.wetside.app.plan.PreparedLoad;
import org.wetside.app.plan.Tonight;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.Recipe;
import org.wetside.core.process.Step;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.thermal.BathTempered;
import org.wetside.core.thermal.BathsTempering;
import org.wetside.core.thermal.Water;
import org.wetside.core.thermal.WaterAtHand;
import org.wetside.reference.Cautions;
import org.wetside.store.Bottles;
import org.wetside.store.Database;
import org.wetside.store.Loads;

/**
 * Brings every bath of a load to its temperature from the waters at hand, and says in which order.
 */
public final class TemperLoad {
  /** Taken when nobody said what the room has. */
  private static final Temperature USUAL_ROOM = Temperature.ofCelsius(20);

  /** Nearer than this the temperature there is counts as the one wanted. */
  private static final double SAME_KELVINS = 0.25;

  private final Supplier<Database> database;
  private final Clock clock;

  /** In this home. */
  public TemperLoad(Supplier<Database> database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /**
   * All baths of that load.
   *
   * @throws BadValueException when there is no such load, or no water was said anywhere
   */
  public LoadTempered of(long id, TemperWish wish) {
    Load load =
        database
            .get()
            .read(session -> new Loads(session).find(id))
            .orElseThrow(
                () -> new BadValueException("load", Long.toString(id), "there is no such load"));
    Tonight tonight = new KeepTonight(database).now();
    List<WaterAtHand> waters = waters(wish, tonight);
    Optional<Temperature> said = wish.room().or(tonight::kitchen);
    Temperature room = said.orElse(USUAL_ROOM);
    List<Step> steps = new ForeseeRun(database, clock).of(load).state().plan().steps();
    LoadBaths reader =
        new LoadBaths(
            load,
            letter -> database.get().read(session -> new Bottles(session).find(letter)),
            room);
    List<BathTempered> baths =
        new BathsTempering(waters, room, wish.timeConstant()).of(reader.of(steps));
    boolean scalds = baths.stream().anyMatch(bath -> bath.waters().scalds());
    return new LoadTempered(
        load,
        waters,
        room,
        said.isPresent(),
        wish.timeConstant(),
        baths,
        LoadBaths.developer(steps)
            .flatMap(name -> asItComes(name, baths))
            .flatMap(comes -> alternative(load, comes)),
        scalds ? List.of(Cautions.open().ofHotWater()) : List.of());
  }

  /** As typed; else what was read tonight, before what the waters of the house usually have. */
  private List<WaterAtHand> waters(TemperWish wish, Tonight tonight) {
    if (!wish.waters().isEmpty()) {
      return wish.waters();
    }
    List<WaterAtHand> waters = new ArrayList<>(tonight.waters());
    for (Water water : new KeepWaters(database).all()) {
      if (waters.stream().noneMatch(one -> one.name().equalsIgnoreCase(water.name()))) {
        waters.add(water.atHand());
      }
    }
    if (waters.isEmpty()) {
      throw new BadValueException(
          "waters at hand",
          "none",
          "say what the tap has, or write the waters of the house down under Equipment");
    }
    return waters;
  }

  private static Optional<Temperature> asItComes(String name, List<BathTempered> baths) {
    return baths.stream()
        .filter(bath -> bath.bath().name().equals(name))
        .map(BathTempered::asItComes)
        .findFirst();
  }

  /** The developer as it comes, and the time the rolls would need there. */
  private Optional<LoadTempered.Alternative> alternative(Load load, Temperature comes) {
    Temperature half = Temperature.ofCelsius(Math.round(comes.celsius() * 2) / 2.0);
    if (half.minus(load.recipe().temperature()).abs().kelvins() < SAME_KELVINS) {
      return Optional.empty();
    }
    try {
      PreparedLoad there = new PrepareLoad(database).of(at(load, half));
      return Optional.of(
          new LoadTempered.Alternative(
              half, there.time(), there.time().isPresent() ? "" : reason(there)));
    } catch (BadValueException refused) {
      return Optional.of(
          new LoadTempered.Alternative(
              half, Optional.empty(), String.valueOf(refused.getMessage())));
    }
  }

  private static String reason(PreparedLoad there) {
    return there.inTheWay().isEmpty() ? "there is no honest time there" : there.inTheWay().get(0);
  }

  private static LoadWish at(Load load, Temperature there) {
    return new LoadWish(
        load.numbers(),
        load.tank(),
        load.process(),
        new Recipe(load.recipe().developer(), load.recipe().dilution(), there),
        Optional.empty(),
        Optional.of(load.fill()),
        load.bottles(),
        load.startsAt(),
        load.note());
  }
}
