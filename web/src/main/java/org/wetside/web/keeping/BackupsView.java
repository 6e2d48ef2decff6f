package org.wetside.web.keeping;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.keeping.DailyBackup;

/**
 * The backups a home keeps.
 *
 * @param folder where
 * @param failedAt when the daily one could not be made; null when it could
 * @param failure why not; null when it could
 * @param backups the newest first
 */
public record BackupsView(
    String folder, @Nullable String failedAt, @Nullable String failure, List<BackupView> backups) {
  /** Keeps an unmodifiable copy. */
  public BackupsView {
    backups = List.copyOf(backups);
  }

  /** As they are now. */
  public static BackupsView of(Wetside wetside) {
    DailyBackup.Failed failed = wetside.dailyBackup().failed().orElse(null);
    return new BackupsView(
        wetside.keptBackups().folder().toString(),
        failed == null ? null : failed.at().toString(),
        failed == null ? null : failed.reason(),
        wetside.keptBackups().all().stream().map(BackupView::of).toList());
  }
}
