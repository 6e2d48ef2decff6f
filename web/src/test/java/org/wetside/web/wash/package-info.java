/** Tests of washing and drying on a page and over HTTP. */
@NullMarked
package org.wetside.web.wash;

import org.jspecify.annotations.NullMarked;
