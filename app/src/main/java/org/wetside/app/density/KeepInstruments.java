package org.wetside.app.density;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.instrument.Instrument;
import org.wetside.core.quantity.BadValueException;
import org.wetside.store.Calibrations;
import org.wetside.store.Database;
import org.wetside.store.Instruments;
import org.wetside.store.Session;

/** The instruments that read density, each with its calibrations. */
public final class KeepInstruments {
  private final Supplier<Database> database;

  KeepInstruments(Supplier<Database> database) {
    this.database = database;
  }

  /** All of them by name. */
  public List<KnownInstrument> all() {
    return database
        .get()
        .read(
            session ->
                new Instruments(session).all().stream().map(one -> known(session, one)).toList());
  }

  /** One of them, its name in any case. */
  public Optional<KnownInstrument> find(String name) {
    return database
        .get()
        .read(session -> new Instruments(session).find(name).map(one -> known(session, one)));
  }

  /**
   * Adds one.
   *
   * @throws BadValueException when there is one of that name
   */
  public void add(Instrument instrument) {
    database
        .get()
        .change(
            session -> {
              Instruments instruments = new Instruments(session);
              if (instruments.find(instrument.name()).isPresent()) {
                throw new BadValueException(
                    "name of the instrument",
                    instrument.name(),
                    "there is one of that name; choose another");
              }
              instruments.add(instrument);
            });
  }

  /** Takes one away with its calibrations; false when there is none of that name. */
  public boolean remove(String name) {
    return database.get().inTransaction(session -> new Instruments(session).remove(name));
  }

  private static KnownInstrument known(Session session, Instrument instrument) {
    return new KnownInstrument(instrument, new Calibrations(session).of(instrument.name()));
  }
}
