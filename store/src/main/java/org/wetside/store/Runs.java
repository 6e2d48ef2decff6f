package org.wetside.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetside.core.bath.UnitOfUse;
import org.wetside.core.process.Step;
import org.wetside.core.quantity.Dilution;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureRange;
import org.wetside.core.quantity.Volume;
import org.wetside.core.run.DoseBasis;
import org.wetside.core.run.Phase;
import org.wetside.core.run.RollInTank;
import org.wetside.core.run.RunCard;
import org.wetside.core.run.RunEvent;
import org.wetside.core.run.RunPlan;
import org.wetside.core.run.RunState;
import org.wetside.core.source.Standing;
import org.wetside.core.thermal.DevelopmentRate;

/**
 * The runs: what was planned, which never changes, and the events, which are only ever added. The
 * phase stands in the run's own row as well, so that those under way are found without a fold; it
 * is written with every event.
 */
public final class Runs {
  private static final String UNDER_WAY = "phase IN ('ready', 'running', 'waiting')";

  private final Session session;

  /** Works in this reading or transaction. */
  public Runs(Session session) {
    this.session = session;
  }

  /**
   * Opens a run.
   *
   * @param taken for each step what is to be taken from its bottle; empty where nothing is booked
   * @return the card under its new identity
   */
  public RunCard add(RunCard card, List<Step> steps, List<Optional<Volume>> taken) {
    long id =
        session.insert(
            "INSERT INTO run (load_id, name, tank, process, process_name, developer, dilution,"
                + " temperature_c, time_standing, time_source, volume_ml, opened_at, phase)"
                + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 'ready')",
            card.load(),
            card.name(),
            card.tank(),
            card.process(),
            card.processName(),
            card.developer(),
            card.dilution().label(),
            card.temperature(),
            card.timeStanding().word(),
            card.timeSource(),
            card.volume(),
            card.openedAt());
    for (RollInTank roll : card.rolls()) {
      session.change(
          "INSERT INTO run_roll VALUES (?, ?, ?, ?, ?, ?)",
          id,
          roll.position(),
          roll.number(),
          roll.film(),
          roll.place(),
          roll.amount().rolls());
    }
    for (int i = 0; i < steps.size(); i++) {
      session.change(
          "INSERT INTO run_step (run_id, position, taken_ml, "
              + StepColumns.NAMES
              + ") VALUES ("
              + StepColumns.marks(3)
              + ")",
          StepColumns.values(steps.get(i), id, i, taken.get(i)));
    }
    return card.withId(id);
  }

  /** Adds an event, and the phase the run is in after it. */
  public void append(long run, RunEvent event, RunState after) {
    List<Object> values =
        new ArrayList<>(
            List.of(
                run,
                event.sequence(),
                event.id(),
                event.step(),
                event.kind().word(),
                event.occurredAt(),
                event.receivedAt(),
                event.screen(),
                event.key()));
    values.addAll(List.of(EventColumns.values(event.what())));
    session.change(
        "INSERT INTO run_event ("
            + EventColumns.NAMES
            + ") VALUES (?"
            + ", ?".repeat(values.size() - 1)
            + ")",
        values.toArray());
    session.change(
        "UPDATE run SET phase = ?, started_at = ?, ended_at = ? WHERE id = ?",
        after.phase().word(),
        after.startedAt(),
        after.endedAt(),
        run);
  }

  /** The head of a run. */
  public Optional<RunCard> find(long run) {
    return session.first("SELECT * FROM run WHERE id = ?", this::card, run);
  }

  /** Newest first, at most so many. */
  public List<RunCard> newest(int most) {
    return session.list("SELECT * FROM run ORDER BY id DESC LIMIT ?", this::card, most);
  }

  /** Identities of all runs, oldest first. */
  public List<Long> all() {
    return session.list("SELECT id FROM run ORDER BY id", row -> row.whole("id"));
  }

  /** What stands in a run's own row, to be held against the fold. */
  public Optional<RunRow> row(long run) {
    return session.first(RunRow.SELECT + " WHERE id = ?", RunRow::read, run);
  }

  /** Identities of the runs that are ready, running or waiting, oldest first. */
  public List<Long> underWay() {
    return session.list(
        "SELECT id FROM run WHERE " + UNDER_WAY + " ORDER BY id", row -> row.whole("id"));
  }

  /** The phase of a run as its last event left it. */
  public Optional<Phase> phase(long run) {
    return session.first(
        "SELECT phase FROM run WHERE id = ?", row -> Phase.fromWord(row.text("phase")), run);
  }

  /** The run of a load that is under way or done, if there is one. */
  public Optional<Long> ofLoad(long load) {
    return session.first(
        "SELECT id FROM run WHERE load_id = ? AND phase <> 'abandoned' ORDER BY id DESC",
        row -> row.whole("id"),
        load);
  }

  /** The newest run of a load, given up or not. */
  public Optional<Long> newestOfLoad(long load) {
    return session.first(
        "SELECT id FROM run WHERE load_id = ? ORDER BY id DESC", row -> row.whole("id"), load);
  }

  /** The runs a roll was in, newest first. */
  public List<Long> ofRoll(String number) {
    return session.list(
        "SELECT run_id FROM run_roll WHERE number = ? ORDER BY run_id DESC",
        row -> row.whole("run_id"),
        number);
  }

  /** Keeps what the tank of a run was like when the run was opened. */
  public void describeTank(long run, String described) {
    session.change("UPDATE run SET tank_described = ? WHERE id = ?", described, run);
  }

  /** The runs that began and are over, but for one, the newest first, at most so many. */
  public List<PastRun> over(long but, int most) {
    return session.list(
        "SELECT id, tank, tank_described, phase, ended_at FROM run WHERE id <> ?"
            + " AND started_at IS NOT NULL AND ended_at IS NOT NULL ORDER BY ended_at DESC LIMIT ?",
        PastRun::read,
        but,
        most);
  }

  /** The runs in a tank like this that began and are over, but for one, the newest first. */
  public List<PastRun> overIn(String tank, String described, long but, int most) {
    return session.list(
        "SELECT id, tank, tank_described, phase, ended_at FROM run WHERE id <> ?"
            + " AND tank = ? AND tank_described = ?"
            + " AND started_at IS NOT NULL AND ended_at IS NOT NULL ORDER BY ended_at DESC LIMIT ?",
        PastRun::read,
        but,
        tank,
        described,
        most);
  }

  /** The newest runs in a tank that began, at most so many. */
  public List<Long> startedIn(String tank, int most) {
    return session.list(
        "SELECT id FROM run WHERE tank = ? AND started_at IS NOT NULL ORDER BY id DESC LIMIT ?",
        row -> row.whole("id"),
        tank,
        most);
  }

  /** The steps as they were planned. */
  public List<Step> steps(long run) {
    return session.list(
        "SELECT * FROM run_step WHERE run_id = ? ORDER BY position", StepColumns::read, run);
  }

  /** For each step what is taken from its bottle. */
  public List<Optional<Volume>> taken(long run) {
    return session.list(
        "SELECT taken_ml FROM run_step WHERE run_id = ? ORDER BY position",
        row -> row.maybeVolume("taken_ml"),
        run);
  }

  /** Everything that was stored, in order. */
  public List<RunEvent> events(long run) {
    return session.list(
        "SELECT * FROM run_event WHERE run_id = ? ORDER BY sequence", EventColumns::read, run);
  }

  /** The state: the fold over what was stored. */
  public RunState state(long run, List<String> checks) {
    return RunState.replay(new RunPlan(steps(run), checks, dose(run)), events(run));
  }

  /** Keeps what the development dose of a run is reckoned from. */
  public void keepDose(long run, DoseBasis basis) {
    DevelopmentRate rate = basis.rate();
    session.change(
        "UPDATE run SET rate_beta_per_k = ?, rate_reference_c = ?, rate_low_c = ?, rate_high_c = ?,"
            + " rate_standing = ?, rate_source = ?, room_c = ?, tank_j_per_k = ? WHERE id = ?",
        rate.betaPerKelvin(),
        rate.reference(),
        rate.span().low(),
        rate.span().high(),
        rate.standing().word(),
        rate.source(),
        basis.room(),
        basis.tankJoulesPerKelvin(),
        run);
  }

  private Optional<DoseBasis> dose(long run) {
    return session.first(
        "SELECT * FROM run WHERE id = ? AND rate_beta_per_k IS NOT NULL", Runs::basis, run);
  }

  private static DoseBasis basis(Row row) {
    TemperatureRange span =
        new TemperatureRange(
            Temperature.ofCelsius(row.number("rate_low_c")),
            Temperature.ofCelsius(row.number("rate_high_c")));
    return new DoseBasis(
        new DevelopmentRate(
            row.number("rate_beta_per_k"),
            Temperature.ofCelsius(row.number("rate_reference_c")),
            span,
            Standing.fromWord(row.text("rate_standing")),
            row.text("rate_source")),
        row.maybeTemperature("room_c"),
        row.number("tank_j_per_k"),
        row.maybeVolume("volume_ml"));
  }

  /** Leaves a sign of life, so that the length of an outage is known after it. */
  public void alive(Instant at) {
    session.change(
        "INSERT INTO run_alive VALUES (1, ?) ON CONFLICT (id) DO UPDATE SET seen_at ="
            + " excluded.seen_at",
        at);
  }

  /** The last sign of life. */
  public Optional<Instant> lastAlive() {
    return session.first(
        "SELECT seen_at FROM run_alive WHERE id = 1", row -> row.moment("seen_at"));
  }

  private RunCard card(Row row) {
    long id = row.whole("id");
    return new RunCard(
        id,
        row.maybeWhole("load_id"),
        row.text("name"),
        row.text("tank"),
        rolls(id),
        row.text("process"),
        row.text("process_name"),
        row.text("developer"),
        Dilution.parse(row.text("dilution")),
        row.maybeTemperature("temperature_c"),
        Standing.fromWord(row.text("time_standing")),
        row.text("time_source"),
        row.maybeVolume("volume_ml"),
        row.moment("opened_at"));
  }

  private List<RollInTank> rolls(long run) {
    return session.list(
        "SELECT * FROM run_roll WHERE run_id = ? ORDER BY position",
        row ->
            new RollInTank(
                row.text("number"),
                row.text("film"),
                (int) row.whole("position"),
                row.text("place"),
                UnitOfUse.ofRolls(row.number("film_rolls"))),
        run);
  }
}
