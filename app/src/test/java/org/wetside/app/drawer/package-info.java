/** The drawer over a real database. Every roll here is invented. */
@NullMarked
package org.wetside.app.drawer;

import org.jspecify.annotations.NullMarked;
