/**
 * The web front door: starts the server on the loopback address and registers every place. In: the
 * use cases of {@code app}. Out: pages, JSON under {@code /api}, server events, static files. Open
 * {@link org.wetside.web.WebServer} first, then {@link org.wetside.web.Places}.
 */
@NullMarked
package org.wetside.web;

import org.jspecify.annotations.NullMarked;
