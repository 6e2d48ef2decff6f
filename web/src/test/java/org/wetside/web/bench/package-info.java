/** The Bench over the real server and database. */
@NullMarked
package org.wetside.web.bench;

import org.jspecify.annotations.NullMarked;
