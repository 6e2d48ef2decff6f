/** Tests of baths over a real database. */
@NullMarked
package org.wetside.app.trial;

import org.jspecify.annotations.NullMarked;
