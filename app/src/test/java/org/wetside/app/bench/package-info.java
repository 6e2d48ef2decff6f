/** The Bench against the real database, with a clock held in hand. */
@NullMarked
package org.wetside.app.bench;

import org.jspecify.annotations.NullMarked;
