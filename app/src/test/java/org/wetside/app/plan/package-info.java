/** Loads by hand, on the real database and the published times. */
@NullMarked
package org.wetside.app.plan;

import org.jspecify.annotations.NullMarked;
