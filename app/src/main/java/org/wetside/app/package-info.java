/** The use cases over one home of data, behind one front door. */
@NullMarked
package org.wetside.app;

import org.jspecify.annotations.NullMarked;
