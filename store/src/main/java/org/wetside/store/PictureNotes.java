package org.wetside.store;

import java.util.Optional;

/** What was said of pictures, and the patches last drawn on each. */
public final class PictureNotes {
  private final Session session;

  /** Works in this reading or transaction. */
  public PictureNotes(Session session) {
    this.session = session;
  }

  /**
   * What was said of one picture.
   *
   * @param declaredLinear whether somebody says that its values are proportional to the light
   * @param patches the patches last drawn on it, as text
   */
  public record Note(boolean declaredLinear, String patches) {}

  /**
   * Of that very file.
   *
   * @param fileMark changes when the file does
   */
  public Optional<Note> find(String name, String fileMark) {
    return session.first(
        "SELECT * FROM picture_note WHERE name = ? AND file_mark = ?",
        row -> new Note(row.yes("declared_linear"), row.text("patches")),
        name,
        fileMark);
  }

  /** Says it anew. */
  public void put(String name, String fileMark, Note note) {
    remove(name);
    session.change(
        "INSERT INTO picture_note VALUES (?, ?, ?, ?)",
        name,
        fileMark,
        note.declaredLinear(),
        note.patches());
  }

  /** Forgets it. */
  public void remove(String name) {
    session.change("DELETE FROM picture_note WHERE name = ?", name);
  }
}
