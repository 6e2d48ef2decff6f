/** The scripts that find Java, build and start the program, on machines that lack something. */
@NullMarked
package org.wetside.acceptance.launcher;

import org.jspecify.annotations.NullMarked;
