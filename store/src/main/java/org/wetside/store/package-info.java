/**
 * The embedded database: opening it, its migrations, and one gateway per aggregate.
 *
 * <p>Enters: records of {@code core}. Leaves: the same records, read back. Rules of the trade live
 * elsewhere. A gateway method takes the {@link org.wetside.store.Session} it works in, so that a
 * use case decides what happens in one transaction. Open {@link org.wetside.store.Database} first.
 */
@NullMarked
package org.wetside.store;

import org.jspecify.annotations.NullMarked;
