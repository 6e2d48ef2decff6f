/**
 * The test roll as people see it: planned, followed step by step on a page, printed. What was typed
 * comes in; out comes the plan as a record, as plain text and as a sheet of two pages, and the page
 * that says what is next. Open {@link org.wetside.web.testroll.TestRollPages} first.
 */
@NullMarked
package org.wetside.web.testroll;

import org.jspecify.annotations.NullMarked;
