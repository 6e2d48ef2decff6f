/** Equipment over a real server. */
@NullMarked
package org.wetside.web.equipment;

import org.jspecify.annotations.NullMarked;
