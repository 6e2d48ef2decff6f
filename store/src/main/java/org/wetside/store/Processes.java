package org.wetside.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wetside.core.process.FilmProcess;

/** The user's own processes. */
public final class Processes {
  private final Session session;

  /** Works in this reading or transaction. */
  public Processes(Session session) {
    this.session = session;
  }

  /** Keeps a process, in place of the one of that short name if there is one. */
  public void keep(FilmProcess process, Instant at) {
    remove(process.slug());
    session.change(
        "INSERT INTO process VALUES (?, ?, ?, ?)",
        process.slug(),
        process.name(),
        process.about(),
        at);
    for (int i = 0; i < process.steps().size(); i++) {
      session.change(
          "INSERT INTO process_step (slug, position, "
              + StepColumns.NAMES
              + ") VALUES ("
              + StepColumns.marks(2)
              + ")",
          StepColumns.values(process.steps().get(i), process.slug(), i));
    }
  }

  /** All of them, by name. */
  public List<FilmProcess> all() {
    return session.list("SELECT * FROM process ORDER BY name", this::read);
  }

  /** The one of that short name. */
  public Optional<FilmProcess> find(String slug) {
    return session.first("SELECT * FROM process WHERE slug = ?", this::read, slug);
  }

  /** Removes one; says whether there was one. Runs keep their own copy of its steps. */
  public boolean remove(String slug) {
    session.change("DELETE FROM process_step WHERE slug = ?", slug);
    return session.change("DELETE FROM process WHERE slug = ?", slug) > 0;
  }

  private FilmProcess read(Row row) {
    String slug = row.text("slug");
    return new FilmProcess(
        slug,
        row.text("name"),
        row.text("about"),
        false,
        session.list(
            "SELECT * FROM process_step WHERE slug = ? ORDER BY position",
            StepColumns::read,
            slug));
  }
}
