/** Test rolls over a real server. */
@NullMarked
package org.wetside.web.testroll;

import org.jspecify.annotations.NullMarked;
