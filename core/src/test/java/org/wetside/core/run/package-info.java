/** The table of a run and its fold. */
@NullMarked
package org.wetside.core.run;

import org.jspecify.annotations.NullMarked;
