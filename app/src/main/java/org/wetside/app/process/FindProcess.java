package org.wetside.app.process;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.quantity.BadValueException;
import org.wetside.reference.BuiltInProcesses;
import org.wetside.store.Database;
import org.wetside.store.Processes;

/** The processes there are: the built-in ones and the user's own. */
public final class FindProcess {
  private final Supplier<Database> database;

  /** In this home; the database is opened only for what is not built in. */
  public FindProcess(Supplier<Database> database) {
    this.database = database;
  }

  /** The built-in ones, then the user's own by name. */
  public List<FilmProcess> all() {
    List<FilmProcess> all = new ArrayList<>(BuiltInProcesses.all());
    all.addAll(database.get().read(session -> new Processes(session).all()));
    return all;
  }

  /**
   * One process.
   *
   * @throws BadValueException when there is none of that short name, with those there are
   */
  public FilmProcess of(String slug) {
    String wanted = slug.strip();
    for (FilmProcess process : BuiltInProcesses.all()) {
      if (process.slug().equals(wanted)) {
        return process;
      }
    }
    return database
        .get()
        .read(session -> new Processes(session).find(wanted))
        .orElseThrow(
            () ->
                new BadValueException(
                    "process",
                    slug,
                    "it must be one of "
                        + all().stream().map(FilmProcess::slug).collect(Collectors.joining(", "))));
  }
}
