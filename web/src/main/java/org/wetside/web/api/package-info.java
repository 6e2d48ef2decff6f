/**
 * What every route under {@code /api} shares: one JSON mapper, one shape of errors (RFC 9457). In:
 * view records and exceptions. Out: JSON. Open {@link org.wetside.web.api.Problem} first.
 */
@NullMarked
package org.wetside.web.api;

import org.jspecify.annotations.NullMarked;
