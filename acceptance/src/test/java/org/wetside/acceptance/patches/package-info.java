/** Patches drawn on a picture, in a real browser. */
@NullMarked
package org.wetside.acceptance.patches;

import org.jspecify.annotations.NullMarked;
