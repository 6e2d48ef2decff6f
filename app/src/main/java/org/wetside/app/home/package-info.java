/**
 * The folder that holds one person's data, who may write in it, and how to reach who does.
 *
 * <p>Enters: a path and the present moment. Leaves: a {@link org.wetside.app.home.HomeLock} held,
 * or the reason why not; the address of the server that works on it, if one runs. Open {@link
 * org.wetside.app.home.Home} first.
 */
@NullMarked
package org.wetside.app.home;

import org.jspecify.annotations.NullMarked;
