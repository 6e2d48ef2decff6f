/** Processes and cues over a real server. */
@NullMarked
package org.wetside.web.process;

import org.jspecify.annotations.NullMarked;
