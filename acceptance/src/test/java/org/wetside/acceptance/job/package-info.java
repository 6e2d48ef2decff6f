/** The main job from the outside: a drawer of rolls to a recorded run, in a real browser. */
@NullMarked
package org.wetside.acceptance.job;

import org.jspecify.annotations.NullMarked;
