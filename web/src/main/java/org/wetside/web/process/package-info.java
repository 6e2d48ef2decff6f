/**
 * Processes and cues: pages, HTTP, view records. In: short names, times, processes as they are
 * typed. Out: view records and pages. Open {@link org.wetside.web.process.ProcessApiRoutes} first.
 */
@NullMarked
package org.wetside.web.process;

import org.jspecify.annotations.NullMarked;
