/** Tests of baths over a real database. */
@NullMarked
package org.wetside.app.care;

import org.jspecify.annotations.NullMarked;
