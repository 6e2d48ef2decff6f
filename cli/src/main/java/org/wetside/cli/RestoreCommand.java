package org.wetside.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.wetside.app.keeping.RestoreBackup;
import org.wetside.web.keeping.RestoredView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code wetside restore FILE}: a backup in place of the data; never while a server runs on them.
 */
@Command(
    name = "restore",
    description = "Put a backup in place of the data; what was there is kept aside.")
final class RestoreCommand extends ViewCommand<RestoredView> {
  @Parameters(paramLabel = "FILE", description = "a file that backup wrote")
  @Nullable Path file;

  @Option(names = "--force", description = "also where there are data already; they are kept aside")
  boolean force;

  @Override
  RestoredView answer() {
    Path backup = BackupCommand.named(file);
    return RestoredView.of(
        backup, new RestoreBackup(home(), HomeCommand.CLOCK).from(backup, force));
  }

  @Override
  int exitCode(RestoredView restored) {
    return restored.check().clean() ? ExitCode.DONE : ExitCode.NOT_DONE;
  }

  @Override
  void print(RestoredView restored, PrintWriter out) {
    out.println(restored.home() + " holds what is in " + restored.file() + " now.");
    if (restored.aside() != null) {
      out.println("What was there before is kept in " + restored.aside());
    }
    CheckCommand.printFindings(restored.check(), out);
  }
}
