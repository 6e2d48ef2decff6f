/** The book of waste over a real server. */
@NullMarked
package org.wetside.web.waste;

import org.jspecify.annotations.NullMarked;
