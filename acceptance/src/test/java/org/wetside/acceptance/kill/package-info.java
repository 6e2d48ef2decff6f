/** The real process, killed in the middle of a run. */
@NullMarked
package org.wetside.acceptance.kill;

import org.jspecify.annotations.NullMarked;
