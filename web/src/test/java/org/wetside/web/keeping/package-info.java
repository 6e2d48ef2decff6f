/** Tests of {@code org.wetside.web.keeping}. */
@NullMarked
package org.wetside.web.keeping;

import org.jspecify.annotations.NullMarked;
