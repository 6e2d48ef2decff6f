package org.wetside.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The screens that were let in over the network, each known by the hash of its secret. */
public final class Screens {
  /**
   * One screen.
   *
   * @param id number, never given again
   * @param name what its owner calls it
   * @param pairedAt when it was let in
   * @param seenAt when it last asked for something
   * @param removedAt when it was shut out again
   */
  public record Stored(
      long id, String name, Instant pairedAt, Instant seenAt, Optional<Instant> removedAt) {}

  private final Session session;

  /** Works in this reading or transaction. */
  public Screens(Session session) {
    this.session = session;
  }

  /** Those that are let in, the one seen last first. */
  public List<Stored> letIn() {
    return session.list(
        "SELECT * FROM screen WHERE removed_at IS NULL ORDER BY seen_at DESC, id DESC",
        Screens::read);
  }

  /** The screen whose secret has this hash, removed ones too. */
  public Optional<Stored> byHash(String keyHash) {
    return session.first("SELECT * FROM screen WHERE key_hash = ?", Screens::read, keyHash);
  }

  /** Lets a screen in and gives its number. */
  public long add(String name, String keyHash, Instant at) {
    return session.insert(
        "INSERT INTO screen (name, key_hash, paired_at, seen_at) VALUES (?, ?, ?, ?)",
        name,
        keyHash,
        at,
        at);
  }

  /** Notes that a screen asked for something. */
  public void seen(long id, Instant at) {
    session.change("UPDATE screen SET seen_at = ? WHERE id = ?", at, id);
  }

  /** Shuts a screen out; false when it was not let in. */
  public boolean remove(long id, Instant at) {
    return session.change(
            "UPDATE screen SET removed_at = ? WHERE id = ? AND removed_at IS NULL", at, id)
        > 0;
  }

  private static Stored read(Row row) {
    return new Stored(
        row.whole("id"),
        row.text("name"),
        row.moment("paired_at"),
        row.moment("seen_at"),
        row.maybeMoment("removed_at"));
  }
}
