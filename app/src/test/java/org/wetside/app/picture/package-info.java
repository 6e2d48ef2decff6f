/** Tests of {@link org.wetside.app.picture}. */
@NullMarked
package org.wetside.app.picture;

import org.jspecify.annotations.NullMarked;
