/**
 * What the interface under {@code /api} promises. In: each route's declaration, written beside its
 * handler. Out: the endpoint that does what was declared, and the OpenAPI document of all of them.
 * Open {@link org.wetside.web.contract.Operation} first.
 */
@NullMarked
package org.wetside.web.contract;

import org.jspecify.annotations.NullMarked;
