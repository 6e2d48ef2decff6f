/** The Bench in a real browser: its modules one by one, and whole runs. */
@NullMarked
package org.wetside.acceptance.bench;

import org.jspecify.annotations.NullMarked;
