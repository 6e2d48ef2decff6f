/**
 * The place Curves: strips of film that were measured, one by one and as families, and the same
 * under {@code /api/curves}.
 *
 * <p>Enters: forms and queries as typed. Leaves: pages with their drawings, view records. Open
 * {@link org.wetside.web.strip.StripRoutes} first.
 */
@NullMarked
package org.wetside.web.strip;

import org.jspecify.annotations.NullMarked;
