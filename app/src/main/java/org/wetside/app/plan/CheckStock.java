package org.wetside.app.plan;

import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.app.shelf.KeepMinimum;
import org.wetside.core.bath.StockRequirement;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.Roll;
import org.wetside.store.Database;
import org.wetside.store.Rolls;

/** Whether a load's fill holds enough of the developer for its film. */
public final class CheckStock {
  private final Supplier<Database> database;

  /** In this home. */
  public CheckStock(Supplier<Database> database) {
    this.database = database;
  }

  /** The check against the maker's minimum; empty where a dilution has no known proportion. */
  public Optional<StockRequirement> of(Load load) {
    return load.recipe()
        .dilution()
        .ratio()
        .map(
            parts ->
                StockRequirement.check(
                    parts.concentrateIn(load.fill()),
                    film(load),
                    new KeepMinimum(database.get()).find(load.recipe().developer())));
  }

  private UnitOfUse film(Load load) {
    return database
        .get()
        .read(
            session -> {
              Rolls rolls = new Rolls(session);
              UnitOfUse film = UnitOfUse.NONE;
              for (String number : load.numbers()) {
                film = film.plus(rolls.find(number).map(Roll::amount).orElse(UnitOfUse.NONE));
              }
              return film;
            });
  }
}
