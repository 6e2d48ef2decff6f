/** Rules of structure, each with its reason. */
@NullMarked
package org.wetside.acceptance.structure;

import org.jspecify.annotations.NullMarked;
