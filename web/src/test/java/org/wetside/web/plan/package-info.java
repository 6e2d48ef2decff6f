/** The Plan over a real server: pages, forms and loads by HTTP. */
@NullMarked
package org.wetside.web.plan;

import org.jspecify.annotations.NullMarked;
