/**
 * Tests from the outside: a real server over a real home, a real browser in front of it. Open
 * {@link org.wetside.acceptance.Browsing} first.
 */
@NullMarked
package org.wetside.acceptance;

import org.jspecify.annotations.NullMarked;
