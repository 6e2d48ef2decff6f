/** The place over the real server and database. Every roll is invented. */
@NullMarked
package org.wetside.web.drawer;

import org.jspecify.annotations.NullMarked;
