/**
 * The page that says what hatches, lines and tape marks mean. In: nothing. Out: one page. Open
 * {@link org.wetside.web.marks.MarksRoutes} first; it is also the smallest example of a place.
 */
@NullMarked
package org.wetside.web.marks;

import org.jspecify.annotations.NullMarked;
