/** The command line: one class per command, formatting for terminals, exit codes. */
@NullMarked
package org.wetside.cli;

import org.jspecify.annotations.NullMarked;
