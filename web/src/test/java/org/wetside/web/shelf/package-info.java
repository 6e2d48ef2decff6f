/** The Shelf over a real server. */
@NullMarked
package org.wetside.web.shelf;

import org.jspecify.annotations.NullMarked;
