package org.wetside.app.bench;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.UUID;
import org.wetside.app.CannotDoException;
import org.wetside.app.plan.MakeLoad;
import org.wetside.app.process.AddRinse;
import org.wetside.core.plan.Load;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.run.Happening;
import org.wetside.core.run.Outcome;
import org.wetside.core.run.Phase;

/**
 * Puts a rinse between two baths of a run before its first pour. Steps of an opened run never
 * change, so it is given up, with the reason in its record, and the load is opened anew.
 */
public final class RinseRun {
  private final Clock clock;
  private final Bench bench;
  private final AddRinse addRinse;
  private final MakeLoad makeLoad;
  private final StartRun startRun;

  /**
   * @param clock when it is done
   * @param bench the conductor of the run
   * @param addRinse puts the rinse into the process
   * @param makeLoad leads the load by it
   * @param startRun opens the load anew
   */
  public RinseRun(
      Clock clock, Bench bench, AddRinse addRinse, MakeLoad makeLoad, StartRun startRun) {
    this.clock = clock;
    this.bench = bench;
    this.addRinse = addRinse;
    this.makeLoad = makeLoad;
    this.startRun = startRun;
  }

  /**
   * The run that has the rinse, ready.
   *
   * @param before number of the step that the rinse comes before, 2 or more
   * @param screen where it was asked for
   * @throws CannotDoException once something was poured, or where the run comes from no load
   * @throws BadValueException when there is no such step, or plain water is there already
   * @throws NoSuchRunException when there is no such run
   */
  public BenchSnapshot of(long run, int before, String screen) {
    BenchSnapshot open = bench.look(run);
    Optional<Long> load = open.card().load();
    if (open.state().phase() != Phase.READY || load.isEmpty()) {
      throw new CannotDoException(
          "Run "
              + run
              + " is "
              + open.state().phase().word()
              + ": its steps stand. Rinse in plain water all the same, and note it");
    }
    String process = addRinse.to(open.card().process(), before).slug();
    giveUp(run, screen);
    Load led = makeLoad.ledBy(load.get(), process);
    return startRun.of(led.id());
  }

  private void giveUp(long run, String screen) {
    Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
    Outcome outcome =
        bench
            .take(
                run,
                new SentEvent(
                    "rinse-" + UUID.randomUUID(),
                    Optional.empty(),
                    new Happening.Abandoned("opened anew with a rinse"),
                    now,
                    screen,
                    ""))
            .outcome();
    if (!(outcome instanceof Outcome.Applied)) {
      throw new CannotDoException("Run " + run + " went on meanwhile; nothing is changed");
    }
  }
}
