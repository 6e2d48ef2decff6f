/** Commands run as a person runs them: through {@link org.wetside.cli.Main}. */
@NullMarked
package org.wetside.cli;

import org.jspecify.annotations.NullMarked;
