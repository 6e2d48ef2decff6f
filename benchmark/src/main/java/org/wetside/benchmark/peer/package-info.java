/**
 * The smallest programs of their kind, to compare start-up with: the same libraries, no Wetside.
 *
 * <p>Enters: nothing, or the path of a database. Leaves: a line, or a page. Open {@link
 * org.wetside.benchmark.peer.Hello} first.
 */
@NullMarked
package org.wetside.benchmark.peer;

import org.jspecify.annotations.NullMarked;
