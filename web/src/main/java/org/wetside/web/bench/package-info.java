/**
 * The Bench: the page that leads a run, and the list of runs. In: snapshots of runs. Out: pages
 * whose scripts go on from the snapshot. Open {@link org.wetside.web.bench.BenchRoutes} first.
 */
@NullMarked
package org.wetside.web.bench;

import org.jspecify.annotations.NullMarked;
