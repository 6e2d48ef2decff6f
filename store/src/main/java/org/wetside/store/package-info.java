/** The embedded database: opening it, its migrations, and one gateway per aggregate. */
@NullMarked
package org.wetside.store;

import org.jspecify.annotations.NullMarked;
