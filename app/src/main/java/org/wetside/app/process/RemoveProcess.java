package org.wetside.app.process;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.wetside.app.CannotDoException;
import org.wetside.core.plan.Load;
import org.wetside.core.plan.LoadState;
import org.wetside.core.process.FilmProcess;
import org.wetside.store.Database;
import org.wetside.store.Loads;
import org.wetside.store.Processes;
import org.wetside.store.Session;

/** Removes a process of the user's own. The record of every run keeps its own copy of the steps. */
public final class RemoveProcess {
  private final Supplier<Database> database;

  /** In this home. */
  public RemoveProcess(Supplier<Database> database) {
    this.database = database;
  }

  /**
   * Removes one.
   *
   * @return what it was
   * @throws org.wetside.core.quantity.BadValueException when there is none, or it is built in
   * @throws CannotDoException while a load that is planned or at the Bench is led by it
   */
  public FilmProcess remove(String slug) {
    KeepProcess.requireOwn(slug);
    return database
        .get()
        .inTransaction(
            session -> {
              FilmProcess process = KeepProcess.own(session, slug);
              List<Long> using = using(session, process.slug());
              if (!using.isEmpty()) {
                throw new CannotDoException(
                    "process "
                        + process.slug()
                        + " is used by load "
                        + using.stream().map(String::valueOf).collect(Collectors.joining(", "))
                        + "; finish it, take it apart or give it another process first");
              }
              new Processes(session).remove(process.slug());
              return process;
            });
  }

  /** Loads not yet done that are led by it. */
  public List<Long> using(String slug) {
    return database.get().read(session -> using(session, slug));
  }

  private static List<Long> using(Session session, String slug) {
    List<Load> open = new ArrayList<>(new Loads(session).in(LoadState.PLANNED));
    open.addAll(new Loads(session).in(LoadState.RUNNING));
    return open.stream().filter(load -> load.process().equals(slug)).map(Load::id).toList();
  }
}
