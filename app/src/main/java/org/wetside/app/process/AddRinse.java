package org.wetside.app.process;

import java.time.Clock;
import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.process.AfterUse;
import org.wetside.core.process.AgitationSchedule;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.Light;
import org.wetside.core.process.LongestTime;
import org.wetside.core.process.Step;
import org.wetside.core.process.StepKind;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.source.Standing;
import org.wetside.store.Database;
import org.wetside.store.Processes;
import org.wetside.store.Session;

/**
 * Puts a rinse between two baths that should not meet. A process of one's own gets it; of a
 * built-in one a copy with the rinse is kept, and found again the next time.
 */
public final class AddRinse {
  /** As long as running water takes to stop a developer (CH-S14 p.104; common practice here). */
  private static final Duration TIME = Duration.ofSeconds(30);

  private final Supplier<Database> database;
  private final Clock clock;

  /** In this home. */
  public AddRinse(Supplier<Database> database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /**
   * The process with the rinse.
   *
   * @param before number of the step that the rinse comes before, 2 or more
   * @throws BadValueException when there is no such process or step, or a rinse is there already
   */
  public FilmProcess to(String slug, int before) {
    return database
        .get()
        .inTransaction(
            session -> {
              FilmProcess process = FindProcess.in(session, slug);
              List<Step> steps = rinsed(process, before);
              return process.builtIn()
                  ? copy(session, process, steps)
                  : keep(
                      session,
                      new FilmProcess(
                          process.slug(), process.name(), process.about(), false, steps));
            });
  }

  private static List<Step> rinsed(FilmProcess process, int before) {
    int size = process.steps().size();
    if (before < 2 || before > size) {
      throw new BadValueException(
          "step for the rinse", String.valueOf(before), "a number from 2 to " + size);
    }
    Step next = process.steps().get(before - 1);
    if (next.kind().water() || process.steps().get(before - 2).kind().water()) {
      throw new BadValueException(
          "step for the rinse",
          String.valueOf(before),
          "there is plain water between them already");
    }
    List<Step> steps = new ArrayList<>(process.steps());
    steps.add(before - 1, rinse(next));
    return steps;
  }

  /** In the dark where the bath after it is; tilted all along. */
  private static Step rinse(Step next) {
    return new Step(
        StepKind.RINSE,
        Optional.empty(),
        Optional.of(TIME),
        next.pourIn(),
        next.drainLead(),
        AgitationSchedule.continuous(),
        next.band(),
        AfterUse.discard(),
        next.light() == Light.DARK ? Light.DARK : Light.ANY,
        LongestTime.of(StepKind.RINSE, TIME),
        Standing.COMMON_PRACTICE,
        "TRADE: plain water between two baths that should not meet");
  }

  private FilmProcess copy(Session session, FilmProcess of, List<Step> steps) {
    Processes kept = new Processes(session);
    for (int number = 1; ; number++) {
      String suffix = number == 1 ? "" : "-" + number;
      String slug = of.slug() + "-rinse" + suffix;
      Optional<FilmProcess> there = kept.find(slug);
      if (there.isPresent() && there.get().steps().equals(steps)) {
        return there.get();
      }
      String name = of.name() + ", with a rinse" + (number == 1 ? "" : " " + number);
      boolean named = kept.all().stream().anyMatch(one -> one.name().equalsIgnoreCase(name));
      if (there.isEmpty() && !named) {
        return keep(session, new FilmProcess(slug, name, of.about(), false, steps));
      }
    }
  }

  private FilmProcess keep(Session session, FilmProcess process) {
    new Processes(session).keep(process, clock.instant().truncatedTo(ChronoUnit.MILLIS));
    return process;
  }
}
