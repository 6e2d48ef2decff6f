/** Test rolls over a real home. */
@NullMarked
package org.wetside.app.testroll;

import org.jspecify.annotations.NullMarked;
