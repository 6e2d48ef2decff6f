/** Learning, over the real database, on rolls of the invented evenings. */
@NullMarked
package org.wetside.app.learning;

import org.jspecify.annotations.NullMarked;
