/** Tests of {@link org.wetside.app.density}. */
@NullMarked
package org.wetside.app.density;

import org.jspecify.annotations.NullMarked;
