/** What must be fast, measured. */
@NullMarked
package org.wetside.benchmark;

import org.jspecify.annotations.NullMarked;
