package org.wetside.store;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.bath.BathKind;
import org.wetside.core.development.Band;
import org.wetside.core.plan.ChosenTime;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.LoadState;
import org.wetside.core.plan.Recipe;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.source.Standing;

/** The loads: planned, running, done and dissolved. */
public final class Loads {
  private final Session session;

  /** Works in this reading or transaction. */
  public Loads(Session session) {
    this.session = session;
  }

  /** Keeps a new load and gives it back with its id. */
  public Load add(Load load) {
    long id =
        session.insert(
            "INSERT INTO load (state, made_at, tank, process, developer, dilution, temperature_c,"
                + " development_ms, standing, source, band_low_ms, band_high_ms, volume_ml,"
                + " starts_at, note) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
            values(load));
    addParts(load.withId(id));
    return load.withId(id);
  }

  /** Writes a load anew under its id. */
  public void change(Load load) {
    Object[] values = java.util.Arrays.copyOf(values(load), 16);
    values[15] = load.id();
    session.change(
        "UPDATE load SET state = ?, made_at = ?, tank = ?, process = ?, developer = ?, dilution = ?,"
            + " temperature_c = ?, development_ms = ?, standing = ?, source = ?, band_low_ms = ?,"
            + " band_high_ms = ?, volume_ml = ?, starts_at = ?, note = ? WHERE id = ?",
        values);
    session.change("DELETE FROM load_roll WHERE load_id = ?", load.id());
    session.change("DELETE FROM load_bottle WHERE load_id = ?", load.id());
    addParts(load);
  }

  /** Moves a load to another state. */
  public void move(long id, LoadState state) {
    session.change("UPDATE load SET state = ? WHERE id = ?", state.word(), id);
  }

  /** One load. */
  public Optional<Load> find(long id) {
    return session.first("SELECT * FROM load WHERE id = ?", this::read, id);
  }

  /** Loads in one state, in the order in which they are meant to start, then were made. */
  public List<Load> in(LoadState state) {
    return session.list(
        "SELECT * FROM load WHERE state = ? ORDER BY starts_at IS NULL, starts_at, id",
        this::read,
        state.word());
  }

  /** Every load a roll was ever in, the last one first. */
  public List<Load> of(String rollNumber) {
    return session.list(
        "SELECT load.* FROM load JOIN load_roll ON load_id = load.id"
            + " JOIN roll ON roll.id = roll_id WHERE number = ? ORDER BY load.id DESC",
        this::read,
        rollNumber);
  }

  private static Object[] values(Load load) {
    return new Object[] {
      load.state().word(),
      load.madeAt(),
      load.tank(),
      load.process(),
      load.recipe().developer(),
      load.recipe().dilution().label(),
      load.recipe().temperature(),
      load.time().time(),
      load.time().standing().word(),
      load.time().source(),
      load.time().band().map(Band::low),
      load.time().band().map(Band::high),
      load.fill(),
      load.startsAt(),
      load.note()
    };
  }

  private void addParts(Load load) {
    int position = 1;
    for (Load.Place place : load.rolls()) {
      session.change(
          "INSERT INTO load_roll (load_id, position, roll_id, own_ms, own_standing)"
              + " VALUES (?, ?, (SELECT id FROM roll WHERE number = ?), ?, ?)",
          load.id(),
          position++,
          place.number(),
          place.ownTime(),
          place.ownStanding().map(Standing::word));
    }
    load.bottles()
        .forEach(
            (bath, letter) ->
                session.change(
                    "INSERT INTO load_bottle VALUES (?, ?, ?)", load.id(), bath.word(), letter));
  }

  private Load read(Row row) {
    long id = row.whole("id");
    return new Load(
        id,
        LoadState.fromWord(row.text("state")),
        row.moment("made_at"),
        places(id),
        row.text("tank"),
        row.text("process"),
        new Recipe(
            row.text("developer"),
            Dilution.parse(row.text("dilution")),
            row.temperature("temperature_c")),
        new ChosenTime(
            row.duration("development_ms"),
            Standing.fromWord(row.text("standing")),
            row.text("source"),
            row.maybeDuration("band_low_ms")
                .flatMap(
                    low -> row.maybeDuration("band_high_ms").map(high -> new Band(low, high)))),
        row.volume("volume_ml"),
        bottles(id),
        row.maybeMoment("starts_at"),
        row.text("note"));
  }

  private List<Load.Place> places(long id) {
    return session.list(
        "SELECT number, own_ms, own_standing FROM load_roll JOIN roll ON roll.id = roll_id"
            + " WHERE load_id = ? ORDER BY position",
        row ->
            new Load.Place(
                row.text("number"),
                row.maybeDuration("own_ms"),
                row.maybeText("own_standing").map(Standing::fromWord)),
        id);
  }

  private Map<BathKind, String> bottles(long id) {
    Map<BathKind, String> bottles = new EnumMap<>(BathKind.class);
    session.list(
        "SELECT bath, letter FROM load_bottle WHERE load_id = ?",
        row -> bottles.put(BathKind.fromWord(row.text("bath")), row.text("letter")),
        id);
    return bottles;
  }
}
