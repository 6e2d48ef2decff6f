/** Cited figures of the trade as files, and the readers that turn each file into core types. */
@NullMarked
package org.wetside.reference;

import org.jspecify.annotations.NullMarked;
