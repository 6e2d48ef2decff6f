package org.wetside.app.process;

import org.wetside.core.safety.Objection;

/**
 * Two baths of a process that should not follow one another as they are.
 *
 * @param step number of the second of them, from 1
 * @param objection both baths, the reason and the source
 */
public record OrderWarning(int step, Objection objection) {
  /** Whether a rinse put before that step is the way out. */
  public boolean rinseHelps() {
    return objection.rule().rinse();
  }
}
