package org.wetside.app.process;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.wetside.core.process.FilmProcess;
import org.wetside.core.process.Step;
import org.wetside.core.quantity.BadValueException;
import org.wetside.reference.BuiltInProcesses;
import org.wetside.store.Database;
import org.wetside.store.Processes;
import org.wetside.store.Session;

/**
 * Keeps processes of the user's own: new ones, copies of any other, changed ones. A run that was
 * opened has its own copy of the steps and is never touched.
 */
public final class KeepProcess {
  /** Words that stand for something else in addresses. */
  private static final List<String> RESERVED = List.of("new");

  private final Supplier<Database> database;
  private final Clock clock;

  /** In this home. */
  public KeepProcess(Supplier<Database> database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /** Kept, or everything that stands in the way. */
  public sealed interface Outcome {
    /** It is kept. */
    record Kept(FilmProcess process) implements Outcome {}

    /** Nothing is kept. */
    record Unclear(List<ProcessFault> faults) implements Outcome {
      public Unclear {
        faults = List.copyOf(faults);
      }
    }

    /**
     * What was kept.
     *
     * @throws BadValueException naming everything that stands in the way
     */
    default FilmProcess orRefuse() {
      if (this instanceof Kept kept) {
        return kept.process();
      }
      List<ProcessFault> faults = ((Unclear) this).faults();
      throw new BadValueException(
          "process",
          faults.size() == 1 ? "1 mistake" : faults.size() + " mistakes",
          faults.stream().map(ProcessFault::words).collect(Collectors.joining("; ")));
    }
  }

  /** Keeps a new one. */
  public Outcome add(ProcessDraft draft) {
    String slug = draft.slugOrMade();
    return database
        .get()
        .inTransaction(
            session -> {
              DraftReader reader = new DraftReader();
              checkFree(session, slug, reader);
              checkName(session, slug, draft.name(), reader);
              return keep(session, reader, slug, draft, List.of());
            });
  }

  /**
   * Keeps another state of one; its short name stays.
   *
   * @throws BadValueException when there is no own process of that short name
   */
  public Outcome change(String slug, ProcessDraft draft) {
    requireOwn(slug);
    return database
        .get()
        .inTransaction(
            session -> {
              FilmProcess before = own(session, slug);
              DraftReader reader = new DraftReader();
              checkName(session, slug, draft.name(), reader);
              return keep(session, reader, slug, draft, before.steps());
            });
  }

  /**
   * Keeps a copy.
   *
   * @param of short name of any process
   * @param as short name of the copy
   * @param name of the copy; empty to make it from the short name
   * @throws BadValueException when there is no such process
   */
  public Outcome copy(String of, String as, String name) {
    ProcessDraft draft =
        ProcessDraft.of(database.get().<FilmProcess>read(session -> FindProcess.in(session, of)));
    return add(draft.named(as, name.isBlank() ? spoken(as.strip()) : name));
  }

  /** The steps of every built-in process, which a typed step is compared with. */
  private static List<Step> cited() {
    return BuiltInProcesses.all().stream().flatMap(one -> one.steps().stream()).toList();
  }

  private Outcome keep(
      Session session, DraftReader reader, String slug, ProcessDraft draft, List<Step> before) {
    Optional<FilmProcess> read = reader.read(slug, draft);
    if (read.isEmpty()) {
      return new Outcome.Unclear(reader.faults());
    }
    StepStanding standing = new StepStanding(cited(), before);
    FilmProcess process =
        new FilmProcess(
            slug,
            read.get().name(),
            read.get().about(),
            false,
            read.get().steps().stream().map(standing::of).toList());
    new Processes(session).keep(process, clock.instant().truncatedTo(ChronoUnit.MILLIS));
    return new Outcome.Kept(process);
  }

  private static void checkFree(Session session, String slug, DraftReader reader) {
    String limit = "";
    if (FindProcess.builtIn(slug).isPresent()) {
      limit = "it is built in and stays as it is; choose another";
    } else if (new Processes(session).find(slug).isPresent()) {
      limit = "you have one of that short name already; choose another";
    } else if (RESERVED.contains(slug) || slug.matches("[0-9-]*")) {
      limit = "it needs a letter and must not be \"new\"";
    } else if (!slug.matches("[a-z0-9]+(-[a-z0-9]+)*") || slug.length() > 60) {
      limit = "lower-case letters, digits and dashes, at most 60";
    }
    if (!limit.isEmpty()) {
      reader.refuse("slug", "process short name", slug, limit);
    }
  }

  private static void checkName(Session session, String slug, String name, DraftReader reader) {
    boolean taken =
        BuiltInProcesses.all().stream().anyMatch(one -> one.name().equalsIgnoreCase(name))
            || new Processes(session)
                .all().stream()
                    .anyMatch(one -> one.name().equalsIgnoreCase(name) && !one.slug().equals(slug));
    if (taken) {
      reader.refuse("name", "process name", name, "there is one of that name; choose another");
    }
  }

  /** Refuses a built-in one, which can be copied and not changed. */
  static void requireOwn(String slug) {
    if (FindProcess.builtIn(slug).isPresent()) {
      throw new BadValueException(
          "process", slug.strip(), "it is built in and stays as it is; make a copy of your own");
    }
  }

  static FilmProcess own(Session session, String slug) {
    return new Processes(session)
        .find(slug.strip())
        .orElseThrow(
            () -> new BadValueException("process", slug, "you have no process of that short name"));
  }

  private static String spoken(String slug) {
    String words = slug.replace('-', ' ');
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
