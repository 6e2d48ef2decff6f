package org.wetside.store;

import java.time.Instant;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetside.core.development.Vessel;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.testroll.Aperture;
import org.wetside.core.testroll.CameraExposure;
import org.wetside.core.testroll.CameraRange;
import org.wetside.core.testroll.KeptTestRoll;
import org.wetside.core.testroll.PieceDeveloped;
import org.wetside.core.testroll.RollPlan;
import org.wetside.core.testroll.Shutter;
import org.wetside.core.testroll.StepDone;
import org.wetside.core.testroll.TestRoll;
import org.wetside.core.testroll.TestStep;
import org.wetside.core.testroll.ThreeTimes;
import org.wetside.core.testroll.TypedReading;

/** Test rolls and how far they have come; those put away stay on file and are not shown. */
public final class TestRolls {
  private static final String PLANNED =
      "film, metered_index, developer, dilution, temperature_c, vessel, metered, fastest, slowest,"
          + " widest, smallest, shortest_ms, middle_ms, longest_ms";

  private final Session session;

  /** Works in this reading or transaction. */
  public TestRolls(Session session) {
    this.session = session;
  }

  /**
   * Writes a new roll down.
   *
   * @param roll a complete one
   * @return its number
   */
  public long add(TestRoll roll, Instant at) {
    return session.insert(
        "INSERT INTO test_roll (kept_at, " + PLANNED + ") VALUES (?, " + marks() + ")",
        with(at, planned(roll)));
  }

  /** Plans a roll anew; what was done and typed stays. */
  public void replan(long id, TestRoll roll) {
    session.change(
        "UPDATE test_roll SET (" + PLANNED + ") = (" + marks() + ") WHERE id = ?",
        and(planned(roll), id));
  }

  /** All in use, the newest first. */
  public List<KeptTestRoll> all() {
    return session.list(
        "SELECT * FROM test_roll WHERE away_at IS NULL ORDER BY id DESC", this::read);
  }

  /** One that is in use. */
  public Optional<KeptTestRoll> find(long id) {
    return session.first(
        "SELECT * FROM test_roll WHERE away_at IS NULL AND id = ?", this::read, id);
  }

  /** Puts a roll away; false when there is none in use. */
  public boolean putAway(long id, Instant at) {
    return session.change(
            "UPDATE test_roll SET away_at = ? WHERE id = ? AND away_at IS NULL", at, id)
        == 1;
  }

  /** Ticks a step; one that was ticked keeps its moment and takes the newer note. */
  public void tick(long id, TestStep step, StepDone done) {
    session.change(
        "INSERT INTO test_roll_step (test_roll_id, step, done_at, note) VALUES (?, ?, ?, ?)"
            + " ON CONFLICT (test_roll_id, step) DO UPDATE SET note = excluded.note",
        id,
        step.word(),
        done.at(),
        done.note());
  }

  /** Takes a tick away. */
  public void untick(long id, TestStep step) {
    session.change(
        "DELETE FROM test_roll_step WHERE test_roll_id = ? AND step = ?", id, step.word());
  }

  /** Writes down how a piece was developed. */
  public void develop(long id, int piece, PieceDeveloped developed) {
    session.change(
        "INSERT INTO test_roll_piece (test_roll_id, piece, time_ms, temperature_c, developed_on)"
            + " VALUES (?, ?, ?, ?, ?) ON CONFLICT (test_roll_id, piece) DO UPDATE SET"
            + " time_ms = excluded.time_ms, temperature_c = excluded.temperature_c,"
            + " developed_on = excluded.developed_on",
        id,
        piece,
        developed.time(),
        developed.temperature(),
        developed.day());
  }

  /** Writes down what was typed for a frame. */
  public void type(long id, TypedReading reading) {
    session.change(
        "INSERT INTO test_roll_reading (test_roll_id, frame, first, second) VALUES (?, ?, ?, ?)"
            + " ON CONFLICT (test_roll_id, frame) DO UPDATE SET"
            + " first = excluded.first, second = excluded.second",
        id,
        reading.frame(),
        reading.first(),
        reading.second());
  }

  /** Joins a developed piece to its curve. */
  public void join(long id, int piece, long curve) {
    session.change(
        "UPDATE test_roll_piece SET strip_id = ? WHERE test_roll_id = ? AND piece = ?",
        curve,
        id,
        piece);
  }

  private static Object[] planned(TestRoll roll) {
    RollPlan plan = roll.plan();
    CameraRange camera = plan.range();
    ThreeTimes times = plan.times();
    return new Object[] {
      roll.film(),
      roll.index(),
      roll.developer(),
      roll.dilution().label(),
      roll.temperature(),
      roll.vessel().word(),
      plan.metered().toString(),
      camera.fastest().toString(),
      camera.slowest().toString(),
      camera.widest().toString(),
      camera.smallest().toString(),
      times.shortest(),
      times.middle(),
      times.longest()
    };
  }

  private static String marks() {
    return "?" + ", ?".repeat(PLANNED.split(",", -1).length - 1);
  }

  private static Object[] with(Object first, Object[] others) {
    Object[] all = new Object[others.length + 1];
    all[0] = first;
    System.arraycopy(others, 0, all, 1, others.length);
    return all;
  }

  private static Object[] and(Object[] others, Object last) {
    Object[] all = Arrays.copyOf(others, others.length + 1);
    all[others.length] = last;
    return all;
  }

  private KeptTestRoll read(Row row) {
    long id = row.whole("id");
    Map<Integer, PieceDeveloped> developed = new LinkedHashMap<>();
    Map<Integer, Long> curves = new LinkedHashMap<>();
    session.list(
        "SELECT * FROM test_roll_piece WHERE test_roll_id = ?",
        piece -> {
          int number = (int) piece.whole("piece");
          developed.put(
              number,
              new PieceDeveloped(
                  piece.duration("time_ms"),
                  piece.maybeTemperature("temperature_c"),
                  piece.day("developed_on")));
          piece
              .maybeWhole("strip_id")
              .flatMap(this::inUse)
              .ifPresent(curve -> curves.put(number, curve));
          return number;
        },
        id);
    return new KeptTestRoll(
        id, roll(row), row.moment("kept_at"), done(id), developed, typed(id), curves);
  }

  /** The curve itself, or the newest that took its place; empty when that is out of use. */
  private Optional<Long> inUse(long curve) {
    return session.first(
        "WITH RECURSIVE line (id, replaced_by, withdrawn_at) AS ("
            + "SELECT id, replaced_by, withdrawn_at FROM strip WHERE id = ?"
            + " UNION ALL SELECT next.id, next.replaced_by, next.withdrawn_at"
            + " FROM strip next JOIN line ON next.id = line.replaced_by)"
            + " SELECT id FROM line WHERE withdrawn_at IS NULL",
        found -> found.whole("id"),
        curve);
  }

  private static TestRoll roll(Row row) {
    return new TestRoll(
        row.text("film"),
        row.maybeExposureIndex("metered_index"),
        row.text("developer"),
        Dilution.parse(row.text("dilution")),
        row.maybeTemperature("temperature_c"),
        Vessel.parse(row.text("vessel")),
        new RollPlan(
            CameraExposure.parse("metered exposure", row.text("metered")),
            new CameraRange(
                Shutter.parse(row.text("fastest")),
                Shutter.parse(row.text("slowest")),
                Aperture.parse(row.text("widest")),
                Aperture.parse(row.text("smallest"))),
            new ThreeTimes(
                row.duration("shortest_ms"),
                row.duration("middle_ms"),
                row.duration("longest_ms"))));
  }

  private Map<TestStep, StepDone> done(long id) {
    Map<TestStep, StepDone> done = new LinkedHashMap<>();
    session.list(
        "SELECT * FROM test_roll_step WHERE test_roll_id = ?",
        step ->
            done.put(
                TestStep.fromWord(step.text("step")),
                new StepDone(step.moment("done_at"), step.text("note"))),
        id);
    return done;
  }

  private Map<Integer, TypedReading> typed(long id) {
    Map<Integer, TypedReading> typed = new LinkedHashMap<>();
    session.list(
        "SELECT * FROM test_roll_reading WHERE test_roll_id = ?",
        reading -> {
          int frame = (int) reading.whole("frame");
          return typed.put(
              frame, new TypedReading(frame, reading.text("first"), reading.text("second")));
        },
        id);
    return typed;
  }
}
