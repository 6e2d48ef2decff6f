/**
 * The folder that holds the data, who may write in it, and how to reach who does.
 *
 * <p>Enters: a path and the present moment. Leaves: a {@link org.wetside.app.home.HomeLock} held,
 * or the reason why not. Open {@link org.wetside.app.home.Home} first.
 */
@NullMarked
package org.wetside.app.home;

import org.jspecify.annotations.NullMarked;
