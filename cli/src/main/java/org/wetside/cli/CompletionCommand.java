package org.wetside.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code wetside completion}: commands and options at the touch of the tabulator key. */
@Command(
    name = "completion",
    description = "Print a script that completes commands and options in bash and zsh.")
final class CompletionCommand implements Callable<Integer> {
  @Spec @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    if (spec == null) {
      throw new IllegalStateException("a command is run through Main");
    }
    spec.commandLine().getOut().print(AutoComplete.bash("wetside", Main.whole()));
    return ExitCode.DONE;
  }
}
