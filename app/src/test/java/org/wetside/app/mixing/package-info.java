/** Tests of tempering a load over a real home. */
@NullMarked
package org.wetside.app.mixing;

import org.jspecify.annotations.NullMarked;
