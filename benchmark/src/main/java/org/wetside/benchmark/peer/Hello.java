package org.wetside.benchmark.peer;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The smallest picocli command with a parameter and an option: says hello. */
@Command(name = "hello", mixinStandardHelpOptions = true, description = "Say hello.")
public final class Hello implements Callable<Integer> {
  @Parameters(paramLabel = "NAME", description = "whom to greet")
  String name = "";

  @Option(names = "--times", paramLabel = "N", description = "how often")
  int times = 1;

  @Spec CommandSpec spec = CommandSpec.create();

  /** Runs it. */
  public static void main(String[] arguments) {
    System.exit(new CommandLine(new Hello()).execute(arguments));
  }

  @Override
  public Integer call() {
    for (int i = 0; i < times; i++) {
      spec.commandLine().getOut().println("Hello, " + name);
    }
    return 0;
  }
}
