/**
 * The folder that holds one person's data, and who is using it.
 *
 * <p>Enters: a path. Leaves: the address of the server that works on it, if one runs. Open {@link
 * org.wetside.app.home.ServerAddress} first.
 */
@NullMarked
package org.wetside.app.home;

import org.jspecify.annotations.NullMarked;
