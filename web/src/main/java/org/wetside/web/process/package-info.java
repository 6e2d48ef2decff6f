/**
 * Processes and cues over HTTP. In: short names and times. Out: view records. Open {@link
 * org.wetside.web.process.ProcessRoutes} first.
 */
@NullMarked
package org.wetside.web.process;

import org.jspecify.annotations.NullMarked;
