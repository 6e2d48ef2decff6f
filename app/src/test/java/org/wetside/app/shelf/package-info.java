/** Tests of baths over a real database. */
@NullMarked
package org.wetside.app.shelf;

import org.jspecify.annotations.NullMarked;
