package org.wetside.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * What a command line came to.
 *
 * @param exitCode one of {@link ExitCode}
 * @param out all of standard output
 * @param err all of standard error
 */
record Typed(int exitCode, String out, String err) {
  /** Types {@code wetside} and these words. */
  static Typed of(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int exitCode = new Main(new PrintWriter(out), new PrintWriter(err)).run(arguments);
    return new Typed(exitCode, out.toString(), err.toString());
  }
}
