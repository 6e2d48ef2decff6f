package org.wetside.app.process;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.LoadState;
import org.wetside.core.process.Cue;
import org.wetside.core.process.CueSheet;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.PlacedStep;
import org.wetside.core.process.Timeline;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.run.RunCard;
import org.wetside.store.Database;
import org.wetside.store.Loads;
import org.wetside.store.Runs;
import org.wetside.store.Session;

/** The cues along a process, or along a load, from the first pour to hanging. */
public final class ShowCues {
  private final Supplier<Database> database;
  private final FindProcess processes;

  /** In this home. */
  public ShowCues(Supplier<Database> database) {
    this.database = database;
    processes = new FindProcess(database);
  }

  /**
   * Cues with their steps.
   *
   * @param process the process, its times known
   * @param steps the steps at their places
   * @param cues in the order in which they are due
   */
  public record Cues(FilmProcess process, List<PlacedStep> steps, List<Cue> cues) {}

  /**
   * Along a process.
   *
   * @param development time of its first developer; empty where the process itself says it
   * @throws BadValueException when there is no such process, or its time is not said
   */
  public Cues of(String slug, Optional<Duration> development) {
    FilmProcess process = processes.of(slug);
    return along(development.map(process::withDevelopment).orElse(process), "");
  }

  /**
   * Along a load, as it is planned; once it is at the Bench, along the steps its run was opened
   * with.
   *
   * @param development stands in place of the load's own time; empty to keep that
   * @throws BadValueException when there is no such load
   */
  public Cues of(long id, Optional<Duration> development) {
    return database
        .get()
        .read(
            session -> {
              Load load =
                  new Loads(session)
                      .find(id)
                      .orElseThrow(
                          () ->
                              new BadValueException(
                                  "load", Long.toString(id), "there is no such load"));
              FilmProcess process = asRun(session, load);
              return along(development.map(process::withDevelopment).orElse(process), load.tank());
            });
  }

  private static FilmProcess asRun(Session session, Load load) {
    Runs runs = new Runs(session);
    Optional<Long> id =
        load.state() == LoadState.PLANNED ? runs.ofLoad(load.id()) : runs.newestOfLoad(load.id());
    Optional<RunCard> run = id.flatMap(runs::find);
    return run.map(
            card ->
                new FilmProcess(
                    card.process(), card.processName(), "", false, runs.steps(card.id())))
        .orElseGet(
            () -> FindProcess.in(session, load.process()).withDevelopment(load.time().time()));
  }

  private static Cues along(FilmProcess process, String tank) {
    List<PlacedStep> steps = Timeline.of(process.steps()).steps();
    return new Cues(process, steps, CueSheet.along(steps, tank));
  }
}
