/**
 * Tests of baths at the Bench: a guide with its cautions, one key that starts the clock, one that
 * stops it.
 *
 * <p>Enters: forms and JSON. Leaves: the page {@code /bench/test/{bottle}} ({@code
 * /bench/test/film} for washed film) and {@code /api/tests/{subject}}. Open {@link
 * org.wetside.web.trial.TestRoutes} first.
 */
@NullMarked
package org.wetside.web.trial;

import org.jspecify.annotations.NullMarked;
