/** Two runs and one pair of hands. */
@NullMarked
package org.wetside.core.hands;

import org.jspecify.annotations.NullMarked;
