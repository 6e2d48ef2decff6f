package org.wetside.web.keeping;

import java.nio.file.Path;
import java.time.Instant;
import org.wetside.app.keeping.KeptBackup;

/**
 * A backup.
 *
 * @param file where it is, or its name in the folder of the home
 * @param kind {@code daily}, {@code by-hand}, {@code before-restore} or {@code before-update}
 * @param madeAt when it was written
 * @param bytes how large it is
 */
public record BackupView(String file, String kind, String madeAt, long bytes) {
  /** One that the home keeps. */
  public static BackupView of(KeptBackup kept) {
    return new BackupView(kept.name(), kept.kind().word(), kept.madeAt().toString(), kept.bytes());
  }

  /** One in a file of the user's choice. */
  public static BackupView of(Path file, long bytes, Instant madeAt) {
    return new BackupView(
        file.toString(), KeptBackup.Kind.BY_HAND.word(), madeAt.toString(), bytes);
  }
}
