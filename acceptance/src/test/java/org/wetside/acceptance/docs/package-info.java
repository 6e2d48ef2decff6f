/** The documents in the repository, held to their form and to what they speak of. */
@NullMarked
package org.wetside.acceptance.docs;

import org.jspecify.annotations.NullMarked;
