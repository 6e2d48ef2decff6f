/** The place Curves, asked by real HTTP. */
@NullMarked
package org.wetside.web.strip;

import org.jspecify.annotations.NullMarked;
