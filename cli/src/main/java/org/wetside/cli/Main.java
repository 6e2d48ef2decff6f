package org.wetside.cli;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.wetside.core.quantity.BadValueException;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Front door of the program: {@code wetside COMMAND …}. */
public final class Main {
  private final PrintWriter out;
  private final PrintWriter err;

  /** A program that writes its answers to {@code out} and its complaints to {@code err}. */
  public Main(PrintWriter out, PrintWriter err) {
    this.out = out;
    this.err = err;
  }

  /** Runs one command in this process and ends it with the command's exit code. */
  public static void main(String[] arguments) {
    PrintWriter out = writer(FileDescriptor.out);
    PrintWriter err = writer(FileDescriptor.err);
    int exitCode = new Main(out, err).run(arguments);
    out.flush();
    err.flush();
    System.exit(exitCode);
  }

  /**
   * Runs one command.
   *
   * @return one of {@link ExitCode}
   */
  public int run(String... arguments) {
    CommandLine line = commandLine(arguments);
    line.setOut(out);
    line.setErr(err);
    line.setParameterExceptionHandler(this::wrongUsage);
    line.setExecutionExceptionHandler((thrown, command, parsed) -> failed(thrown));
    if (arguments.length == 0) {
      line.usage(out);
      return ExitCode.WRONG_INPUT;
    }
    int exitCode = line.execute(arguments);
    out.flush();
    err.flush();
    return exitCode;
  }

  /** The tree with the commands that were named; with all of them when none was. */
  private static CommandLine commandLine(String[] arguments) {
    CommandLine line = new CommandLine(new Root());
    boolean named = false;
    for (String argument : arguments) {
      if (Commands.NAMES.contains(argument) && !line.getSubcommands().containsKey(argument)) {
        line.addSubcommand(argument, Commands.create(argument));
        named = true;
      }
    }
    return named ? line : whole();
  }

  /** The tree with every command, for help, completion and the tests that compare it with docs. */
  static CommandLine whole() {
    CommandLine line = new CommandLine(new Root());
    for (String name : Commands.NAMES) {
      line.addSubcommand(name, Commands.create(name));
    }
    return line;
  }

  private int wrongUsage(ParameterException thrown, String[] arguments) {
    String command = thrown.getCommandLine().getCommandSpec().qualifiedName();
    // A number that is none is refused by the parser, in whose words the option stands.
    err.println(
        thrown.getCause() instanceof BadValueException ours
            ? Failure.of(ours).message()
            : thrown.getMessage());
    err.println("Usage: " + command + " --help");
    return ExitCode.WRONG_INPUT;
  }

  private int failed(Exception thrown) {
    Failure failure = Failure.of(thrown);
    err.println(failure.message());
    if (System.getenv("WETSIDE_TRACE") != null) {
      thrown.printStackTrace(err);
    }
    return failure.exitCode();
  }

  /** Standard streams in UTF-8 whatever the locale says, so that ° and – survive a bare shell. */
  private static PrintWriter writer(FileDescriptor descriptor) {
    return new PrintWriter(
        new OutputStreamWriter(
            new BufferedOutputStream(new FileOutputStream(descriptor)), StandardCharsets.UTF_8));
  }
}
