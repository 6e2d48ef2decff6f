/** How processes become timelines and cues; open {@link org.wetside.core.process.CueSheetTest}. */
@NullMarked
package org.wetside.core.process;

import org.jspecify.annotations.NullMarked;
