package org.wetside.app.process;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.quantity.BadValueException;
import org.wetside.reference.BuiltInProcesses;
import org.wetside.store.Database;
import org.wetside.store.Processes;
import org.wetside.store.Session;

/** The processes there are, in one place: the built-in ones first, then the user's own. */
public final class FindProcess {
  private final Supplier<Database> database;

  /** In this home; the database is opened only for what is not built in. */
  public FindProcess(Supplier<Database> database) {
    this.database = database;
  }

  /** The built-in ones, then the user's own by name. */
  public List<FilmProcess> all() {
    return database.get().read(FindProcess::all);
  }

  /**
   * One process.
   *
   * @throws BadValueException when there is none of that short name, with those there are
   */
  public FilmProcess of(String slug) {
    return builtIn(slug)
        .orElseGet(() -> database.get().<FilmProcess>read(session -> in(session, slug)));
  }

  /** One process; empty when there is none of that short name. */
  public Optional<FilmProcess> find(String slug) {
    return builtIn(slug)
        .or(() -> database.get().read(session -> new Processes(session).find(slug.strip())));
  }

  /**
   * One process, within a reading or transaction that is under way.
   *
   * @throws BadValueException when there is none of that short name, with those there are
   */
  public static FilmProcess in(Session session, String slug) {
    return builtIn(slug)
        .or(() -> new Processes(session).find(slug.strip()))
        .orElseThrow(
            () ->
                new BadValueException(
                    "process",
                    slug,
                    "it must be one of "
                        + all(session).stream()
                            .map(FilmProcess::slug)
                            .collect(Collectors.joining(", "))));
  }

  /** The built-in one of that short name. */
  static Optional<FilmProcess> builtIn(String slug) {
    String wanted = slug.strip();
    return BuiltInProcesses.all().stream().filter(one -> one.slug().equals(wanted)).findFirst();
  }

  private static List<FilmProcess> all(Session session) {
    List<FilmProcess> all = new ArrayList<>(BuiltInProcesses.all());
    all.addAll(new Processes(session).all());
    return all;
  }
}
