/**
 * The command line: one class per command, formatting for terminals, exit codes.
 *
 * <p>Enters: what was typed. Leaves: lines of text or JSON on standard output, one sentence on
 * standard error when it did not work, and an {@link org.wetside.cli.ExitCode}. A command asks one
 * question, gets one view record, from this process or from the server that runs on the same home,
 * and prints it. Open {@link org.wetside.cli.Main} first, then {@link
 * org.wetside.cli.VersionCommand} as the smallest example.
 */
@NullMarked
package org.wetside.cli;

import org.jspecify.annotations.NullMarked;
