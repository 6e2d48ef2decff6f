/**
 * Test rolls in one home: planned from what was typed, ticked step by step over days or weeks, and
 * joined to the curves of its pieces. What was typed comes in; out comes the roll with all that is
 * known of it. Open {@link org.wetside.app.testroll.KeepTestRolls} first.
 */
@NullMarked
package org.wetside.app.testroll;

import org.jspecify.annotations.NullMarked;
