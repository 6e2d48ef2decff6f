/** A test roll followed from its plan to a time, in a real browser. */
@NullMarked
package org.wetside.acceptance.testroll;

import org.jspecify.annotations.NullMarked;
