package org.wetside.app.process;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.app.care.CareForSteps;
import org.wetside.core.bath.BathKind;
import org.wetside.core.plan.Load;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.Step;
import org.wetside.store.Database;

/** Whether the baths of a process may follow one another. */
public final class CheckOrder {
  private final Supplier<Database> database;

  /** In this home. */
  public CheckOrder(Supplier<Database> database) {
    this.database = database;
  }

  /** What is to be said of a process, with the bottles it names itself. */
  public List<OrderWarning> of(FilmProcess process) {
    return of(process, Map.of(), "");
  }

  /** What is to be said of a load: with its own bottles and its developer. */
  public List<OrderWarning> of(Load load) {
    FilmProcess process =
        database.get().<FilmProcess>read(session -> FindProcess.in(session, load.process()));
    return of(process, load.bottles(), load.recipe().developer());
  }

  /**
   * The same for a load that is still being thought through.
   *
   * @param bottles letter by bath, where one was chosen
   * @param developer its name; empty when not said
   */
  public List<OrderWarning> of(
      FilmProcess process, Map<BathKind, String> bottles, String developer) {
    List<Step> steps = process.steps().stream().map(step -> from(step, bottles)).toList();
    return new CareForSteps(database)
        .order(steps, developer).stream()
            .map(objection -> new OrderWarning(objection.position() + 1, objection))
            .toList();
  }

  private static Step from(Step step, Map<BathKind, String> bottles) {
    Optional<String> letter = step.kind().bath().map(bottles::get).or(step::bottle);
    return step.withBottle(letter, step.afterUse());
  }
}
