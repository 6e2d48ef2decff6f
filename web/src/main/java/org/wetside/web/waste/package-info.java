/**
 * The book of waste as pages under {@code /shelf/waste}, over {@code /api/waste}, and on paper: the
 * label of a jug and the sheet that goes with it when it is handed in. Open {@link
 * org.wetside.web.waste.WastePages} first.
 */
@NullMarked
package org.wetside.web.waste;

import org.jspecify.annotations.NullMarked;
