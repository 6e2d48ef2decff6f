/** Pages, routes and server events over the use cases. */
@NullMarked
package org.wetside.web;

import org.jspecify.annotations.NullMarked;
