package org.wetside.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.wetside.app.home.Home;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/**
 * A command that asks one question and prints the view record it gets: as text for people, or as
 * the JSON that the same question gets over HTTP.
 *
 * @param <V> the view record
 */
abstract class ViewCommand<V> implements Callable<Integer> {
  @Option(
      names = "--json",
      description = "print JSON for programs; the names of numbers carry their unit")
  boolean json;

  @Spec @Nullable CommandSpec spec;

  @ParentCommand @Nullable Root root;

  /** Asks the question. Whatever it throws is translated by {@link Failure}. */
  abstract V answer();

  /** What else is done with the answer, before it is printed; nothing for most. */
  void received(V view) {}

  /** How the command ends once its answer is printed. */
  int exitCode(V view) {
    return ExitCode.DONE;
  }

  /** Writes the answer for people. Must not need more than the view record. */
  abstract void print(V view, PrintWriter out);

  @Override
  public final Integer call() {
    V view = answer();
    received(view);
    PrintWriter out = out();
    if (json) {
      out.println(JsonText.of(view));
    } else {
      print(view, out);
    }
    return exitCode(view);
  }

  /** Where answers go. */
  final PrintWriter out() {
    if (spec == null) {
      throw new IllegalStateException("a command is run through Main");
    }
    return spec.commandLine().getOut();
  }

  /** The data to work on. */
  final Home home() {
    if (root == null) {
      throw new IllegalStateException("a command is run through Main");
    }
    return root.home();
  }
}
