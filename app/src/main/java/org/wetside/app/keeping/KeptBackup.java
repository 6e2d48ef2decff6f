package org.wetside.app.keeping;

import java.nio.file.Path;
import java.time.Instant;

/**
 * A backup in the folder of the home.
 *
 * @param file where
 * @param kind why it was made
 * @param madeAt when it was written
 * @param bytes how large it is
 */
public record KeptBackup(Path file, Kind kind, Instant madeAt, long bytes) {
  /** Why it was made; the beginning of its file name. */
  public enum Kind {
    /** By the server, once a day. */
    DAILY("daily"),
    /** Because somebody asked. */
    BY_HAND("by-hand"),
    /** What was there before another backup was put back. */
    BEFORE_RESTORE("before-restore"),
    /** What was there before a newer program changed the tables. */
    BEFORE_UPDATE("before-update");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** As its file name begins. */
    public String word() {
      return word;
    }
  }

  /** Its file name. */
  public String name() {
    return String.valueOf(file.getFileName());
  }
}
