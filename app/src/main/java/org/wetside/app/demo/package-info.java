/**
 * An invented evening to try the program with: the last tide mills of a drowned valley, in winter.
 *
 * <p>Enters: an empty folder and the real clock. Leaves: an open home with every place filled and
 * one run half way. Open {@link org.wetside.app.demo.FillDemo} first.
 */
@NullMarked
package org.wetside.app.demo;

import org.jspecify.annotations.NullMarked;
