/** How pages look, weigh and hold, measured in a real browser. */
@NullMarked
package org.wetside.acceptance.look;

import org.jspecify.annotations.NullMarked;
