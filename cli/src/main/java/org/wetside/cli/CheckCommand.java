package org.wetside.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.wetside.app.keeping.CheckData;
import org.wetside.web.keeping.FindingsView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code wetside check}: whether what is stored is whole and agrees with itself. */
@Command(
    name = "check",
    description = "Check that what is stored is whole and agrees with itself; ends with 3 if not.")
final class CheckCommand extends ViewCommand<FindingsView> {
  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "a backup to check instead of the data folder")
  @Nullable Path file;

  @Override
  FindingsView answer() {
    return FindingsView.of(file == null ? CheckData.of(home()) : CheckData.of(file));
  }

  @Override
  int exitCode(FindingsView findings) {
    return findings.clean() ? ExitCode.DONE : ExitCode.NOT_DONE;
  }

  @Override
  void print(FindingsView findings, PrintWriter out) {
    printFindings(findings, out);
  }

  static void printFindings(FindingsView findings, PrintWriter out) {
    for (FindingsView.FaultView fault : findings.faults()) {
      out.println(fault.where() + ": " + fault.what());
    }
    out.println(findings.sentence());
  }
}
