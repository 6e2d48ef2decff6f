/**
 * The place Drawer: exposed rolls that wait, put in by a line, by form or many at once.
 *
 * <p>Enters: rolls as typed. Leaves: the page, and the way to a load. Open {@link
 * org.wetside.web.drawer.DrawerRoutes} first.
 */
@NullMarked
package org.wetside.web.drawer;

import org.jspecify.annotations.NullMarked;
