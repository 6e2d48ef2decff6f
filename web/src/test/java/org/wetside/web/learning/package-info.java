/** Pages and interface of learning, asked by HTTP. */
@NullMarked
package org.wetside.web.learning;

import org.jspecify.annotations.NullMarked;
