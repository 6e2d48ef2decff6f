/**
 * Instruments that read density, and patches read from pictures: pages under {@code
 * /curves/instruments}, {@code /curves/tablets}, {@code /curves/patches}, and the same over HTTP.
 *
 * <p>Enters: tablets, calibrations and rectangles as they are typed or drawn. Leaves: view records
 * and pages. Open {@link org.wetside.web.density.PatchPages} first.
 */
@NullMarked
package org.wetside.web.density;

import org.jspecify.annotations.NullMarked;
