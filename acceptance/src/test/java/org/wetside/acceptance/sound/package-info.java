/**
 * What is really heard: a real browser renders the sound of a real run, and its samples are
 * compared with the plan. Open {@link org.wetside.acceptance.sound.CueTimingTest} first.
 */
@NullMarked
package org.wetside.acceptance.sound;

import org.jspecify.annotations.NullMarked;
