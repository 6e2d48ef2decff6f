package org.wetside.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.wetside.app.home.Home;
import org.wetside.app.keeping.MakeBackup;
import org.wetside.web.keeping.BackupView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code wetside backup FILE}: all data in one file. Reads the database beside a running server,
 * which goes on writing; nothing has to pass through it.
 */
@Command(name = "backup", description = "Copy all data into one file, also while a run goes on.")
final class BackupCommand extends ViewCommand<BackupView> {
  @Parameters(paramLabel = "FILE", description = "where to, for example wetside-backup.db")
  @Nullable Path file;

  @Option(names = "--force", description = "replace the file if it is there")
  boolean force;

  @Override
  BackupView answer() {
    Home home = home();
    Path target = named(file);
    long bytes = new MakeBackup(home, HomeCommand.CLOCK).to(target, force);
    return BackupView.of(target, bytes, HomeCommand.CLOCK.instant());
  }

  @Override
  void print(BackupView backup, PrintWriter out) {
    out.println(backup.file() + ": all data of this moment, " + Metric.bytes(backup.bytes()));
  }

  /** The file as it was typed; picocli sees to it that it was. */
  static Path named(@Nullable Path file) {
    if (file == null) {
      throw new IllegalStateException("a command is run through Main");
    }
    return file;
  }
}
