/** Tests of the certificates. */
@NullMarked
package org.wetside.app.authority;

import org.jspecify.annotations.NullMarked;
